//! Allergens by the ingredients, and by the user's own marks.

use super::law::{LabelLaw, UsMajor};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::ingredients::{Allergen, Food};

/// What the user read on a packet beyond what the ingredient is by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct FoodMark {
    /// The ingredient.
    pub food: Food,
    /// It contains these.
    pub contains: Vec<Allergen>,
    /// It may contain these.
    pub may_contain: Vec<Allergen>,
}

/// All of the user's marks.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks {
    /// By ingredient.
    pub foods: Vec<FoodMark>,
    /// What may come from the kitchen itself: the table, the tins, the air.
    pub kitchen: Vec<Allergen>,
}

/// What says that an allergen is in the bread, or may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AllergenSource {
    /// The ingredient itself.
    Ingredient(LineAt),
    /// The user's mark on an ingredient: it contains it.
    Marked(LineAt),
    /// The user's mark on an ingredient: it may contain it.
    MayContain(LineAt),
    /// The user's mark on the kitchen.
    Kitchen,
}

/// An allergen, and all that says so.
#[derive(Clone, Debug, PartialEq)]
pub struct AllergenRow {
    /// Which.
    pub allergen: Allergen,
    /// What says so, each line once.
    pub sources: Vec<AllergenSource>,
}

impl AllergenRow {
    /// Whether it is in the bread, and not only may be.
    #[must_use]
    pub fn contained(&self) -> bool {
        let certain = |source: &AllergenSource| {
            matches!(
                source,
                AllergenSource::Ingredient(_) | AllergenSource::Marked(_)
            )
        };
        self.sources.iter().any(certain)
    }
}

/// Every allergen of a formula that the law names, in the law's order, with what says so.
///
/// What is not listed is not thereby absent: only packets and kitchens can tell that.
///
/// Source: Regulation (EU) No 1169/2011, annex II; 21 USC 343(w).
#[must_use]
pub fn allergens(formula: &Formula, marks: &Marks, law: LabelLaw) -> Vec<AllergenRow> {
    let named = |allergen: &Allergen| law == LabelLaw::Eu || UsMajor::of(*allergen).is_some();
    let rows = Allergen::ALL
        .into_iter()
        .filter(named)
        .map(|allergen| AllergenRow {
            allergen,
            sources: sources(formula, marks, allergen),
        });
    rows.filter(|row| !row.sources.is_empty()).collect()
}

fn sources(formula: &Formula, marks: &Marks, allergen: Allergen) -> Vec<AllergenSource> {
    let mut told = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        for (line, written) in own.lines.iter().enumerate() {
            told.extend(by_line(
                &written.food,
                marks,
                allergen,
                LineAt { part, line },
            ));
        }
    }
    if marks.kitchen.contains(&allergen) {
        told.push(AllergenSource::Kitchen);
    }
    told
}

fn by_line(food: &Food, marks: &Marks, allergen: Allergen, at: LineAt) -> Option<AllergenSource> {
    if food.allergens().contains(&allergen) {
        return Some(AllergenSource::Ingredient(at));
    }
    let marked = || marks.foods.iter().filter(|mark| mark.food == *food);
    if marked().any(|mark| mark.contains.contains(&allergen)) {
        return Some(AllergenSource::Marked(at));
    }
    marked()
        .any(|mark| mark.may_contain.contains(&allergen))
        .then_some(AllergenSource::MayContain(at))
}
