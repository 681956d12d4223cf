//! Swapping one ingredient for another.

use super::{Figure, FigureTarget, Figures, Form, Formula, FormulaError, LineAt, reach};
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;

/// What stays as it is when an ingredient is swapped.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Hold {
    /// The weight of the line.
    #[default]
    Weight,
    /// The water the line brings: more milk than there was water.
    OwnWater,
    /// The line's weight, and the dough's true water on flour, another line giving way.
    TrueWater(LineAt),
}

/// The formula with another ingredient on one line.
///
/// The line counts as flour by the new ingredient's role; a missed weighing of the old one is
/// dropped.
///
/// # Errors
/// [`FormulaError::NoSuchLine`]; [`FormulaError::CannotMove`] where the water is to be held and
/// the new ingredient brings none; as [`reach`] where another line gives way.
pub fn swap(
    formula: &Formula,
    at: LineAt,
    food: Food,
    hold: Hold,
) -> Result<Formula, FormulaError> {
    let old = formula.line(at).ok_or(FormulaError::NoSuchLine { at })?;
    let mass = match hold {
        Hold::OwnWater => as_much_water(old.mass.component(old.food.composition().water), &food)?,
        Hold::Weight | Hold::TrueWater(_) => old.mass,
    };
    let mut swapped = formula.clone();
    if let Some(line) = swapped.line_mut(at) {
        line.food = food;
        line.mass = mass;
        line.counts_as_flour = None;
        line.poured = None;
    }
    match hold {
        Hold::Weight | Hold::OwnWater => Ok(swapped),
        Hold::TrueWater(giving) => {
            let share = Figures::of(formula, Form::AsWritten).share(Figure::TrueWater)?;
            let target = FigureTarget::OfFlour(Figure::TrueWater, share);
            Ok(reach(&swapped, target, giving)?.formula)
        }
    }
}

/// How much of a food brings so much water.
pub(super) fn as_much_water(water: Mass, food: &Food) -> Result<Mass, FormulaError> {
    let content = food.composition().water.fraction();
    if content > 0.0 {
        Ok(Mass::from_grams(water.grams() / content)?)
    } else {
        let food = food.name().to_owned();
        Err(FormulaError::CannotMove { food })
    }
}
