//! Writing a sheet as a recipe in the vocabulary of schema.org, as JSON-LD.

use std::borrow::Cow;

use crate::engine::batch::{BatchTarget, scale};
use crate::engine::formula::{Line, Part};
use crate::engine::nutrition::{Nutrient, Nutrients, energy_eu, nutrition};
use crate::engine::quantity::{Factor, Mass};
use crate::sheet::enum_names::{PARTS, spelt};
use crate::sheet::interchange::csv::full_name;
use crate::sheet::record::Tree;
use crate::sheet::{Batch, Sheet};

type Fields<'t> = Vec<(Cow<'t, str>, Tree<'t>)>;

/// The sheet as a recipe, made once. `steps` has the sentences for each part, in the order of the
/// formula. What one piece holds is told where it can be worked out.
///
/// Each ingredient carries the name of its part in brackets; the sections of the instructions
/// have the same names, so that what was written can be read back whole.
///
/// Source: schema.org, types `Recipe`, `HowToSection`, `HowToStep` and `NutritionInformation`.
#[must_use]
pub fn write_recipe(sheet: &Sheet, steps: &[Vec<String>]) -> String {
    let mut fields: Fields = vec![
        ("@context".into(), text("https://schema.org")),
        ("@type".into(), text("Recipe")),
        ("name".into(), text(sheet.name.clone())),
    ];
    if !sheet.note.is_empty() {
        fields.push(("description".into(), text(sheet.note.clone())));
    }
    let pieces = sheet.batch.pieces.get();
    fields.push(("recipeYield".into(), text(pieces.to_string())));
    let ingredients = sheet.formula.parts.iter().flat_map(ingredients);
    fields.push(("recipeIngredient".into(), Tree::List(ingredients.collect())));
    let sections = sheet
        .formula
        .parts
        .iter()
        .enumerate()
        .map(|(at, part)| section(part, steps.get(at).map_or(&[], Vec::as_slice)));
    fields.push(("recipeInstructions".into(), Tree::List(sections.collect())));
    fields.extend(piece(sheet).map(|told| ("nutrition".into(), told)));
    Tree::Fields(fields).to_string()
}

fn ingredients(part: &Part) -> impl Iterator<Item = Tree<'static>> + use<'_> {
    let ingredient = |line: &Line| {
        let (grams, food) = (line.mass.grams(), full_name(&line.food));
        text(format!("{grams} g {food} ({})", part.name))
    };
    part.lines
        .iter()
        .filter(|line| line.mass > Mass::ZERO)
        .map(ingredient)
}

fn section(part: &Part, steps: &[String]) -> Tree<'static> {
    let step = |sentence: &String| {
        Tree::Fields(vec![
            ("@type".into(), text("HowToStep")),
            ("text".into(), text(sentence.clone())),
        ])
    };
    Tree::Fields(vec![
        ("@type".into(), text("HowToSection")),
        ("name".into(), text(part.name.clone())),
        ("additionalType".into(), text(spelt(part.kind, PARTS))),
        (
            "itemListElement".into(),
            Tree::List(steps.iter().map(step).collect()),
        ),
    ])
}

/// What one piece holds as it is eaten. The vocabulary wants a number and its unit in one text.
fn piece(sheet: &Sheet) -> Option<Tree<'static>> {
    let Batch { losses, pieces, .. } = &sheet.batch;
    let once = BatchTarget::Times(Factor::ONE);
    let made = scale(&sheet.formula, once, *losses, *pieces).ok()?;
    let (mass, held) = nutrition(&made).ok()?.in_piece();
    told(mass, &held)
}

fn told(mass: Mass, held: &Nutrients) -> Option<Tree<'static>> {
    let energy = energy_eu(held).ok()?.kilocalories();
    let grams = |nutrient| format!("{:.1} g", held.of_one(nutrient).grams());
    let sodium = held.of_one(Nutrient::Sodium).grams() * 1000.0;
    Some(Tree::Fields(vec![
        ("@type".into(), text("NutritionInformation")),
        ("servingSize".into(), text(format!("{:.1} g", mass.grams()))),
        ("calories".into(), text(format!("{energy:.0} kcal"))),
        ("fatContent".into(), text(grams(Nutrient::Fat))),
        (
            "saturatedFatContent".into(),
            text(grams(Nutrient::Saturates)),
        ),
        (
            "carbohydrateContent".into(),
            text(grams(Nutrient::Carbohydrate)),
        ),
        ("sugarContent".into(), text(grams(Nutrient::Sugars))),
        ("fiberContent".into(), text(grams(Nutrient::Fibre))),
        ("proteinContent".into(), text(grams(Nutrient::Protein))),
        ("sodiumContent".into(), text(format!("{sodium:.0} mg"))),
    ]))
}

fn text(text: impl Into<Cow<'static, str>>) -> Tree<'static> {
    Tree::Text(text.into())
}
