//! Writing a sheet as a recipe in the vocabulary of schema.org, as JSON-LD.

use serde::Serialize;

use crate::engine::batch::{BatchTarget, scale};
use crate::engine::formula::{Line, Part};
use crate::engine::ingredients::Food;
use crate::engine::nutrition::{Nutrient, Nutrients, energy_eu, nutrition};
use crate::engine::quantity::{Factor, Mass};
use crate::sheet::{Batch, Sheet};
use crate::storage::enum_names::{PARTS, spelt};
use crate::storage::record::json;

#[derive(Serialize)]
struct Recipe<'t> {
    #[serde(rename = "@context")]
    context: &'static str,
    #[serde(rename = "@type")]
    is: &'static str,
    name: &'t str,
    #[serde(skip_serializing_if = "str::is_empty")]
    description: &'t str,
    #[serde(rename = "recipeYield")]
    pieces: String,
    #[serde(rename = "recipeIngredient")]
    ingredients: Vec<String>,
    #[serde(rename = "recipeInstructions")]
    sections: Vec<Section<'t>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    nutrition: Option<Nutrition>,
}

#[derive(Serialize)]
struct Section<'t> {
    #[serde(rename = "@type")]
    is: &'static str,
    name: &'t str,
    #[serde(rename = "additionalType")]
    kind: &'static str,
    #[serde(rename = "itemListElement")]
    steps: Vec<Step<'t>>,
}

#[derive(Serialize)]
struct Step<'t> {
    #[serde(rename = "@type")]
    is: &'static str,
    text: &'t str,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct Nutrition {
    #[serde(rename = "@type")]
    is: &'static str,
    serving_size: String,
    calories: String,
    fat_content: String,
    saturated_fat_content: String,
    carbohydrate_content: String,
    sugar_content: String,
    fiber_content: String,
    protein_content: String,
    sodium_content: String,
}

/// The sheet as a recipe, made once. `steps` has the sentences for each part, in the order of the
/// formula; `called` names an ingredient. The nutrition of one piece is written where it can be worked out.
///
/// Each ingredient carries the name of its part in brackets; the sections of the instructions
/// have the same names, so that what was written can be read back whole.
///
/// Source: schema.org, types `Recipe`, `HowToSection`, `HowToStep` and `NutritionInformation`.
#[must_use]
pub fn write_recipe(sheet: &Sheet, steps: &[Vec<String>], called: fn(&Food) -> String) -> String {
    let parts = &sheet.formula.parts;
    let sections = parts.iter().enumerate();
    json(&Recipe {
        context: "https://schema.org",
        is: "Recipe",
        name: &sheet.name,
        description: &sheet.note,
        pieces: sheet.batch.pieces.to_string(),
        ingredients: parts
            .iter()
            .flat_map(|part| ingredients(part, called))
            .collect(),
        sections: sections
            .map(|(at, part)| section(part, steps.get(at).map_or(&[], Vec::as_slice)))
            .collect(),
        nutrition: piece(sheet),
    })
}

fn ingredients(part: &Part, called: fn(&Food) -> String) -> impl Iterator<Item = String> {
    let ingredient = move |line: &Line| {
        let (grams, food) = (line.mass.grams(), called(&line.food));
        format!("{grams} g {food} ({})", part.name)
    };
    part.lines
        .iter()
        .filter(|line| line.mass > Mass::ZERO)
        .map(ingredient)
}

fn section<'t>(part: &'t Part, steps: &'t [String]) -> Section<'t> {
    let step = |text| Step {
        is: "HowToStep",
        text,
    };
    Section {
        is: "HowToSection",
        name: &part.name,
        kind: spelt(part.kind, PARTS),
        steps: steps.iter().map(String::as_str).map(step).collect(),
    }
}

/// What one piece holds as it is eaten. The vocabulary wants a number and its unit in one text.
fn piece(sheet: &Sheet) -> Option<Nutrition> {
    let Batch { losses, pieces, .. } = &sheet.batch;
    let once = BatchTarget::Times(Factor::ONE);
    let scaled = scale(&sheet.formula, once, *losses, *pieces).ok()?;
    let (mass, held) = nutrition(&scaled).ok()?.in_piece();
    per_piece(mass, &held)
}

fn per_piece(mass: Mass, held: &Nutrients) -> Option<Nutrition> {
    let energy = energy_eu(held).ok()?.kilocalories();
    let grams = |nutrient| format!("{:.1} g", held.of_one(nutrient).grams());
    let sodium = held.of_one(Nutrient::Sodium).grams() * 1000.0;
    Some(Nutrition {
        is: "NutritionInformation",
        serving_size: format!("{:.1} g", mass.grams()),
        calories: format!("{energy:.0} kcal"),
        fat_content: grams(Nutrient::Fat),
        saturated_fat_content: grams(Nutrient::Saturates),
        carbohydrate_content: grams(Nutrient::Carbohydrate),
        sugar_content: grams(Nutrient::Sugars),
        fiber_content: grams(Nutrient::Fibre),
        protein_content: grams(Nutrient::Protein),
        sodium_content: format!("{sodium:.0} mg"),
    })
}
