//! Allergens as a sheet: what is in the bread, what may be, and who says so.

use crate::engine::formula::{Formula, LineAt};
use crate::engine::nutrition::{AllergenRow, LabelLaw, Marks, Telling, allergens as found};
use crate::text::{chart::listed, language::text, name, tr, tr_noop};

/// One allergen and who tells of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenLine {
    /// What it is called.
    pub name: &'static str,
    /// Who says so: "Whole milk; Butter (packet)".
    pub told_by: String,
}

/// Allergens of a formula as a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenView {
    /// In the bread.
    pub contains: Vec<AllergenLine>,
    /// Perhaps in the bread.
    pub may_contain: Vec<AllergenLine>,
    /// All of it as sentences.
    pub says: String,
    /// What it cannot know.
    pub note: &'static str,
}

const NOTE: &str = tr_noop!(
    "This goes by what the ingredients are and by what you have marked. Packets \
                    and kitchens differ: read every packet, and mark what it says."
);

/// The allergens of a formula that a law wants named.
#[must_use]
pub fn allergens(formula: &Formula, marks: &Marks, law: LabelLaw) -> AllergenView {
    let rows = found(formula, marks, law);
    let lines = |contained: bool| -> Vec<AllergenLine> {
        let kept = rows.iter().filter(|row| row.contained() == contained);
        kept.map(|row| line(row, formula)).collect()
    };
    let (contains, may_contain) = (lines(true), lines(false));
    let mut says = vec![name::allergen_list(
        rows.iter()
            .filter(|row| row.contained())
            .map(|row| &row.allergen),
    )];
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
        contains,
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
    let mut told: Vec<String> = Vec::new();
    for telling in &row.told_by {
        let one = match *telling {
            Telling::Ingredient(at) => of(at),
            Telling::Marked(at) => tr!("{value} (packet)", value = of(at)),
            Telling::MayContain(at) => tr!("{value} (packet: may contain)", value = of(at)),
            Telling::Kitchen => tr!("your kitchen").to_owned(),
        };
        if !told.contains(&one) {
            told.push(one);
        }
    }
    AllergenLine {
        name: name::allergen(row.allergen),
        told_by: told.join("; "),
    }
}
