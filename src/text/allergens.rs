//! Allergens in words: what is in the bread, what may be, and what says so.

use crate::engine::formula::{Formula, LineAt};
use crate::engine::nutrition::{AllergenRow, AllergenSource};
use crate::results::batch::allergens::AllergenResults;
use crate::text::{chart::listed, language::text, name, tr, tr_noop};

/// An allergen, and what says so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenLine {
    /// Its name.
    pub name: &'static str,
    /// What says so: "Whole milk; Butter (packet)".
    pub sources: String,
}

/// The allergens of a formula in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenView {
    /// In the bread.
    pub contains: Vec<AllergenLine>,
    /// Perhaps in the bread.
    pub may_contain: Vec<AllergenLine>,
    /// All of it as sentences.
    pub says: String,
    /// What this cannot know.
    pub note: &'static str,
}

const NOTE: &str = tr_noop!(
    "This goes by what the ingredients are and by what you have marked. Packets \
                    and kitchens differ: read every packet, and mark what it says."
);

/// The allergens of a formula in words; `formula` is the one they were found in.
#[must_use]
pub fn view(found: &AllergenResults, formula: &Formula) -> AllergenView {
    let line = |row| line(row, formula);
    let may_contain: Vec<AllergenLine> = found.possible().map(line).collect();
    let contained = found.contained().map(|row| &row.allergen);
    let mut says = vec![name::allergen_list(contained)];
    let perhaps: Vec<String> = may_contain
        .iter()
        .map(|line| {
            line.name
                .to_lowercase()
                .replace("brazil", "Brazil")
                .replace("brasil", "Brasil")
        })
        .collect();
    says.extend(listed(&perhaps).map(|list| tr!("May contain {list}.", list = list)));
    AllergenView {
        contains: found.contained().map(line).collect(),
        may_contain,
        says: says.join(" "),
        note: text(NOTE),
    }
}

fn line(row: &AllergenRow, formula: &Formula) -> AllergenLine {
    let of = |at: LineAt| {
        formula
            .line(at)
            .map(|line| name::food_short(&line.food).into_owned())
            .unwrap_or_default()
    };
    let mut foods: Vec<String> = Vec::new();
    for source in &row.sources {
        let one = match *source {
            AllergenSource::Ingredient(at) => of(at),
            AllergenSource::Marked(at) => tr!("{value} (packet)", value = of(at)),
            AllergenSource::MayContain(at) => tr!("{value} (packet: may contain)", value = of(at)),
            AllergenSource::Kitchen => tr!("your kitchen").to_owned(),
        };
        if !foods.contains(&one) {
            foods.push(one);
        }
    }
    AllergenLine {
        name: name::allergen(row.allergen),
        sources: foods.join("; "),
    }
}
