//! The trade's worked examples of baker's percentages, read from their file and made into formulas.

use softcrumb::engine::formula::{Basis, Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Label, OwnFood, Role};
use softcrumb::engine::quantity::Mass;

use crate::printed::number;
use crate::table::{Row, rows};

pub(crate) const EXAMPLES: &str = include_str!("data/bakers_percentage_examples.csv");

pub(crate) fn mass(printed: &str) -> Mass {
    Mass::from_grams(number(printed)).unwrap()
}

pub(crate) fn food(ingredient: &str) -> Food {
    let role = match ingredient {
        flour if flour.ends_with("flour") => Role::Flour,
        yeast if yeast.ends_with("yeast") => Role::Yeast,
        "water" => Role::Water,
        "milk" => Role::Liquid,
        "egg" | "eggs" => Role::Egg,
        "sugar" => Role::Sugar,
        "salt" => Role::Salt,
        "butter" | "fat" | "olive oil" => Role::Fat,
        "milk solids" => Role::Dairy,
        other => panic!("{other} has no role here"),
    };
    Food::Own(OwnFood {
        name: ingredient.to_owned(),
        role,
        label: Label::default(),
        allergens: Vec::new(),
    })
}

fn kind(stage: &str) -> PartKind {
    match stage {
        "poolish" | "sponge" => PartKind::Preferment,
        "final" | "total" => PartKind::Final,
        other => panic!("{other} is no stage"),
    }
}

/// The rows of one example that are ingredients of its stages. A poolish that is listed in the
/// final dough is a part, and a total is a sum; where there is nothing but a total, that is the
/// dough.
fn ingredients(id: &str) -> Vec<Row> {
    let all: Vec<Row> = rows(EXAMPLES)
        .into_iter()
        .filter(|row| row["id"] == id)
        .collect();
    let staged = all.iter().any(|row| row["stage"] != "total");
    all.into_iter()
        .filter(|row| row["ingredient"] != "poolish" && (!staged || row["stage"] != "total"))
        .collect()
}

/// A printed row, and the place of its line in the formula.
pub(crate) type Placed = (LineAt, Row);

/// The formula of an example, one part a stage; whatever unit was printed stands for grams.
pub(crate) fn example(id: &str) -> (Formula, Vec<Placed>) {
    let mut parts: Vec<Part> = Vec::new();
    let mut placed = Vec::new();
    for row in ingredients(id) {
        if parts.last().is_none_or(|last| last.name != row["stage"]) {
            parts.push(Part {
                kind: kind(&row["stage"]),
                name: row["stage"].clone(),
                lines: Vec::new(),
                steam: Mass::ZERO,
                temperature: None,
            });
        }
        let part = parts.len() - 1;
        let lines = &mut parts[part].lines;
        let line = lines.len();
        lines.push(Line::new(
            food(&row["ingredient"]),
            mass(&row["printed_mass"]),
        ));
        placed.push((LineAt { part, line }, row));
    }
    (Formula { parts }, placed)
}

pub(crate) fn every_example() -> Vec<String> {
    let mut ids: Vec<String> = rows(EXAMPLES)
        .into_iter()
        .map(|row| row["id"].clone())
        .collect();
    ids.dedup();
    assert_eq!(ids.len(), 10);
    ids
}

/// Whose flour the printed percentages are on: two works give them stage by stage.
pub(crate) fn printed_basis(row: &Row) -> Basis {
    match (row["id"].as_str(), row["stage"].as_str()) {
        ("BP01", _) | ("BP03", "poolish") => Basis::OwnPart,
        _ => Basis::AllFlour,
    }
}
