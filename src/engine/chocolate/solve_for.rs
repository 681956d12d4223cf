//! Setting a filling or a syrup from another figure than its weights.

use super::error::ChocolateError;
use super::syrup::Syrup;
use crate::engine::formula::{Formula, FormulaError, Line, Part, set_part_mass};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Factor, Mass, Share};

/// The formula with a filling that is such a share of the dough of a piece.
///
/// `m = p (D − S)`: a filling follows the dough that reaches the pieces, so its share of a piece
/// is its weight in the formula on the formula's dough less steam, whatever the batch.
///
/// # Errors
/// [`FormulaError`] as [`set_part_mass`]; a filling of one line that weighed nothing takes it.
pub fn set_filling(
    formula: &Formula,
    part: usize,
    of_dough: Share,
) -> Result<Formula, FormulaError> {
    let steam: Mass = formula.dough_parts().map(|part| part.steam).sum();
    let mass = formula
        .dough()
        .unsaturated()?
        .less(steam)
        .try_component(of_dough)?;
    set_all(formula, part, mass)
}

/// The formula with so much liquid, all kinds together, in the syrup of one part.
///
/// The liquids keep their ratio; where they weighed nothing, the first takes all.
///
/// # Errors
/// [`FormulaError::NoSuchPart`]; [`FormulaError::NothingIn`] where no liquid is among its lines;
/// [`FormulaError::OffScale`].
pub fn set_liquid(formula: &Formula, part: usize, liquid: Mass) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let own = part_mut(&mut changed, part)?;
    let there = liquids(own)
        .map(|line| line.mass)
        .sum::<Mass>()
        .unsaturated()?;
    match liquid.share_of(there) {
        Some(times) => {
            for line in liquids(own) {
                line.mass = line.mass.try_component(times)?;
            }
        }
        None => {
            let first = liquids(own).next();
            first.ok_or(FormulaError::NothingIn { part })?.mass = liquid;
        }
    }
    Ok(changed)
}

impl Syrup {
    /// Chocolate for one part of liquid; none without liquid.
    #[must_use]
    pub fn chocolate_for_one(&self) -> Option<Factor> {
        let components = self.chocolate.share_of(self.liquid)?;
        Factor::from_number(components.fraction()).ok()
    }

    /// The liquid for which there is so much chocolate to one part of it.
    ///
    /// # Errors
    /// [`ChocolateError::OffScale`] when it is more than a tonne.
    pub fn liquid_at(&self, chocolate_for_one: Factor) -> Result<Mass, ChocolateError> {
        let grams = self.chocolate.grams() / chocolate_for_one.number();
        Ok(Mass::from_grams(grams)?)
    }

    /// The liquid that brings the water of the handbook's rule; none where it brings no water.
    #[must_use]
    pub fn liquid_by_rule(&self) -> Option<Mass> {
        let water_in_one = self.components.liquid.water;
        if water_in_one > 0.0 {
            Mass::from_grams(self.rule.needed.grams() / water_in_one).ok()
        } else {
            None
        }
    }
}

/// A part made so heavy; one line that weighed nothing takes it all.
fn set_all(formula: &Formula, part: usize, mass: Mass) -> Result<Formula, FormulaError> {
    let mut changed = formula.clone();
    let own = part_mut(&mut changed, part)?;
    if own.mass() > Mass::ZERO {
        return set_part_mass(formula, part, mass);
    }
    let first = own.lines.first_mut();
    first.ok_or(FormulaError::NothingIn { part })?.mass = mass;
    Ok(changed)
}

fn part_mut(formula: &mut Formula, part: usize) -> Result<&mut Part, FormulaError> {
    formula
        .parts
        .get_mut(part)
        .ok_or(FormulaError::NoSuchPart { part })
}

/// The lines of a syrup that are no chocolate.
fn liquids(part: &mut Part) -> impl Iterator<Item = &mut Line> {
    part.lines
        .iter_mut()
        .filter(|line| line.food.role() != Role::Chocolate)
}
