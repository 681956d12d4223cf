//! Allergens by the ingredients, and by the user's own marks.

use super::law::{LabelLaw, UsMajor};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::ingredients::{Allergen, Food, Presence};

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
    /// A made-up ingredient that usually holds it: its packet tells.
    Usual(LineAt),
    /// A made-up ingredient that may hold it: its packet tells.
    Possible(LineAt),
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
        self.presence() == Presence::Contains
    }

    /// How sure it is that it is in the bread: by the surest of what says so.
    #[must_use]
    pub fn presence(&self) -> Presence {
        let all = self.sources.iter().map(|source| match source {
            AllergenSource::Ingredient(_) | AllergenSource::Marked(_) => Presence::Contains,
            AllergenSource::Usual(_) => Presence::Usual,
            AllergenSource::Possible(_)
            | AllergenSource::MayContain(_)
            | AllergenSource::Kitchen => Presence::Possible,
        });
        all.min().unwrap_or(Presence::NotKnown)
    }
}

/// Every allergen of a formula that the law names, in the law's order, with what says so.
///
/// What is not listed is not thereby absent: see [`unread_packets`].
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
    let presence = food.presence(allergen);
    if presence == Some(Presence::Contains) {
        return Some(AllergenSource::Ingredient(at));
    }
    if marks.of(food).any(|mark| mark.contains.contains(&allergen)) {
        return Some(AllergenSource::Marked(at));
    }
    if marks
        .of(food)
        .any(|mark| mark.may_contain.contains(&allergen))
    {
        return Some(AllergenSource::MayContain(at));
    }
    match presence? {
        Presence::Usual => Some(AllergenSource::Usual(at)),
        Presence::Possible => Some(AllergenSource::Possible(at)),
        Presence::Contains | Presence::NotKnown => None,
    }
}

/// The lines of made-up ingredients, each ingredient once, on whose packets the user has marked
/// nothing: what else they hold is not known.
#[must_use]
pub fn unread_packets(formula: &Formula, marks: &Marks) -> Vec<LineAt> {
    let mut foods: Vec<&Food> = Vec::new();
    let mut unread = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        for (line, written) in own.lines.iter().enumerate() {
            let food = &written.food;
            if food.packet_decides() && !marks.read(food) && !foods.contains(&food) {
                foods.push(food);
                unread.push(LineAt { part, line });
            }
        }
    }
    unread
}

impl Marks {
    fn of(&self, food: &Food) -> impl Iterator<Item = &FoodMark> {
        self.foods.iter().filter(move |mark| mark.food == *food)
    }

    /// Whether the user marked anything that the packet of a food says.
    #[must_use]
    pub fn read(&self, food: &Food) -> bool {
        self.of(food)
            .any(|mark| !(mark.contains.is_empty() && mark.may_contain.is_empty()))
    }
}
