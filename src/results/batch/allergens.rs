//! Allergens: what is in the bread, what may be, and what says so.

use crate::engine::formula::Formula;
use crate::engine::ingredients::{Allergen, Food};
use crate::engine::nutrition::{AllergenRow, FoodMark, LabelLaw, Marks, allergens};
use crate::sheet::Pantry;

/// The allergens of a formula that a law wants named, in its order.
#[derive(Clone, Debug, PartialEq)]
pub struct AllergenResults {
    /// Every allergen that is in the bread or may be.
    pub rows: Vec<AllergenRow>,
}

/// The allergens of a formula by its ingredients, by what packets say, and by the kitchen.
///
/// ```
/// use softcrumb::engine::ingredients::Allergen;
/// use softcrumb::engine::nutrition::LabelLaw;
/// use softcrumb::results::batch::allergens;
/// use softcrumb::sheet::{Pantry, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let found = allergens::of(&sheet.formula, &Pantry::default(), LabelLaw::Eu);
///
/// assert!(found.contained().any(|row| row.allergen == Allergen::Wheat));
/// assert_eq!(found.possible().count(), 0);
/// ```
#[must_use]
pub fn of(formula: &Formula, pantry: &Pantry, law: LabelLaw) -> AllergenResults {
    AllergenResults {
        rows: allergens(formula, &marks(formula, pantry), law),
    }
}

/// What the packets of a formula's ingredients say, and the kitchen.
fn marks(formula: &Formula, pantry: &Pantry) -> Marks {
    let of = |food: &Food| {
        let item = pantry.item(food)?;
        Some(FoodMark {
            food: food.clone(),
            contains: item.contains.clone(),
            may_contain: item.may_contain.clone(),
        })
    };
    let lines = formula.parts.iter().flat_map(|part| &part.lines);
    Marks {
        foods: lines.filter_map(|line| of(&line.food)).collect(),
        kitchen: pantry.kitchen.clone(),
    }
}

/// The allergens that are not among those marked.
#[must_use]
pub fn unmarked(marked: &[Allergen]) -> Vec<Allergen> {
    let all = Allergen::ALL.into_iter();
    all.filter(|one| !marked.contains(one)).collect()
}

impl AllergenResults {
    /// The allergens that are in the bread.
    pub fn contained(&self) -> impl Iterator<Item = &AllergenRow> {
        self.rows.iter().filter(|row| row.contained())
    }

    /// The allergens that may be in the bread.
    pub fn possible(&self) -> impl Iterator<Item = &AllergenRow> {
        self.rows.iter().filter(|row| !row.contained())
    }
}
