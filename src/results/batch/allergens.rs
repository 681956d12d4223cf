//! Allergens: what is in the bread, what may be, and what says so.

use crate::engine::formula::{Formula, LineAt};
use crate::engine::ingredients::{Allergen, Food, Presence};
use crate::engine::nutrition::{AllergenRow, FoodMark, LabelLaw, Marks, allergens, unread_packets};
use crate::sheet::Pantry;

/// The allergens of a formula that a law wants named, in its order.
#[derive(Clone, Debug, PartialEq)]
pub struct AllergenResults {
    /// Every allergen that is in the bread or may be.
    pub rows: Vec<AllergenRow>,
    /// Made-up ingredients, each once, whose packets the user has not read: what else they hold is
    /// not known.
    pub unread: Vec<LineAt>,
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
/// // The packet of the chocolate decides on soya: it is not silently left out.
/// assert!(found.usual().any(|row| row.allergen == Allergen::Soybeans));
/// ```
#[must_use]
pub fn of(formula: &Formula, pantry: &Pantry, law: LabelLaw) -> AllergenResults {
    let marks = marks(formula, pantry);
    AllergenResults {
        rows: allergens(formula, &marks, law),
        unread: unread_packets(formula, &marks),
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

/// Returns the allergens that are not among those marked.
#[must_use]
pub fn unmarked(marked: &[Allergen]) -> Vec<Allergen> {
    let all = Allergen::ALL.into_iter();
    all.filter(|one| !marked.contains(one)).collect()
}

impl AllergenResults {
    /// Returns the allergens that are in the bread.
    pub fn contained(&self) -> impl Iterator<Item = &AllergenRow> {
        self.rows.iter().filter(|row| row.contained())
    }

    /// Returns the allergens that are usually in the bread, by packets that are still to be read.
    pub fn usual(&self) -> impl Iterator<Item = &AllergenRow> {
        let usual = |row: &&AllergenRow| row.presence() == Presence::Usual;
        self.rows.iter().filter(usual)
    }
}
