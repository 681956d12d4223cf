//! Reading a recipe: what can be understood becomes a sheet, every line says what became of it.

use std::num::NonZeroU16;

use super::document::{field, is_a, recipe, texts};
use super::error::RecipeError;
use super::line::{Found, Unread, read};
use super::names::RecipeNames;
use super::plain_html::{linked_data, plain};
use super::sections::{heading, kind};
use super::spanish;
use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Bread, Formula, Line, LineAt, Part, PartKind};
use crate::engine::quantity::{Mass, Temperature};
use crate::sheet::{Batch, HeatSettings, Language, Sheet, plain as plain_text};
use crate::storage::Json;
use crate::storage::enum_names::PARTS;

/// A heading among the ingredients.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Heading {
    /// Its name.
    pub name: String,
    /// How the lines below it are read.
    pub kind: PartKind,
}

/// What became of a line.
#[derive(Clone, Debug, PartialEq)]
pub enum Understood {
    /// It heads the lines below it.
    Heading(Heading),
    /// It is an ingredient, at this place of the formula.
    Line(LineAt, Box<Found>),
    /// It could not be understood.
    Not(Unread),
}

/// A line of the recipe.
#[derive(Clone, Debug, PartialEq)]
pub struct RecipeLine {
    /// As it was written.
    pub text: String,
    /// What became of it.
    pub understood: Understood,
}

/// A recipe that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadRecipe {
    /// What could be understood.
    pub sheet: Sheet,
    /// Every line of ingredients, and what became of it.
    pub lines: Vec<RecipeLine>,
    /// Fields of the recipe that were not used.
    pub unused: Vec<String>,
    /// Whether the note had to be cut short.
    pub note_cut: bool,
}

/// Most bytes of a file with a recipe.
pub const RECIPE_LIMIT: usize = 4_000_000;

const USED: [&str; 7] = [
    "name",
    "description",
    "recipeIngredient",
    "ingredients",
    "recipeInstructions",
    "recipeYield",
    "yield",
];

/// Reads a recipe in the vocabulary of schema.org: JSON-LD by itself, or a page that holds some.
///
/// # Errors
/// [`RecipeError`] when there is no recipe, or nothing of it can be understood.
pub fn read_recipe(text: &str, names: &RecipeNames) -> Result<ReadRecipe, RecipeError> {
    if text.len() > RECIPE_LIMIT {
        let bytes = text.len();
        return Err(RecipeError::TooLarge {
            bytes,
            most: RECIPE_LIMIT,
        });
    }
    let text = text.trim_start_matches('\u{feff}');
    let mut trouble = None;
    let scripts = if text.trim_start().starts_with('<') {
        linked_data(text)
    } else {
        vec![text]
    };
    for script in scripts {
        match Json::parse(script) {
            Ok(tree) => {
                if let Some(recipe) = recipe(&tree) {
                    return understood(recipe, names);
                }
            }
            Err((line, column)) => trouble = Some(RecipeError::NotJson { line, column }),
        }
    }
    Err(trouble.unwrap_or(RecipeError::NoRecipe))
}

fn understood(recipe: &Json, names: &RecipeNames) -> Result<ReadRecipe, RecipeError> {
    let written = field(recipe, "recipeIngredient").or_else(|| field(recipe, "ingredients"));
    let written = texts(written);
    if written.is_empty() {
        return Err(RecipeError::NoIngredients);
    }
    let sections = sections(field(recipe, "recipeInstructions"));
    let (parts, lines) = parts(&written, &sections, names);
    if parts.is_empty() {
        return Err(RecipeError::NothingUnderstood);
    }
    let (note, note_cut) = note(recipe);
    let name = texts(field(recipe, "name")).join(" ");
    let name = plain_text::name(&name, Sheet::NAME_LENGTH);
    let sheet = Sheet {
        name: if name.is_empty() {
            names.recipe.clone()
        } else {
            name
        },
        bread: Bread::default(),
        formula: Formula { parts },
        batch: Batch {
            wanted: BatchTarget::default(),
            losses: Losses::default(),
            pieces: pieces(recipe),
            syrup_at: Temperature::known(40.0),
            tin: None,
        },
        heat: HeatSettings::default(),
        note,
    };
    Ok(ReadRecipe {
        sheet,
        lines,
        unused: unused(recipe),
        note_cut,
    })
}

/// Names and kinds of the sections of the instructions.
fn sections(instructions: Option<&Json>) -> Vec<Heading> {
    let Some(Json::List(items)) = instructions else {
        return Vec::new();
    };
    items
        .iter()
        .filter(|item| is_a(item, "HowToSection"))
        .filter_map(|item| {
            let name = texts(field(item, "name")).into_iter().next()?;
            let stated = texts(field(item, "additionalType")).into_iter().next();
            let known = stated.and_then(|word| {
                let found = PARTS.iter().find(|(_, spelt)| *spelt == word);
                found.map(|(kind, _)| *kind)
            });
            let kind = known.unwrap_or_else(|| kind(&name));
            Some(Heading { name, kind })
        })
        .collect()
}

/// The parts of all lines that were understood, and what became of each line.
fn parts(
    written: &[String],
    sections: &[Heading],
    names: &RecipeNames,
) -> (Vec<Part>, Vec<RecipeLine>) {
    let mut parts: Vec<Part> = Vec::new();
    let mut lines = Vec::new();
    let language = if spanish::is_written(written) {
        Language::Spanish
    } else {
        Language::English
    };
    let mut under = Heading {
        name: names.dough.clone(),
        kind: PartKind::Final,
    };
    let mut count = 0;
    for text in written {
        let understood = if let Some(name) = heading(text) {
            let kind = kind(&name);
            under = Heading { name, kind };
            Understood::Heading(under.clone())
        } else {
            let aside = sections
                .iter()
                .find(|one| text.ends_with(&format!(" ({})", one.name)));
            let cut = aside.and_then(|one| text.strip_suffix(&format!(" ({})", one.name)));
            match read(cut.unwrap_or(text), language, names) {
                Ok(found) if count < Formula::MOST_LINES => {
                    count += 1;
                    let at = place(&mut parts, aside.unwrap_or(&under), &found);
                    at.map_or(Understood::Not(Unread::TooMany), |at| {
                        Understood::Line(at, Box::new(found))
                    })
                }
                Ok(_) => Understood::Not(Unread::TooMany),
                Err(unread) => Understood::Not(unread),
            }
        };
        let text = text.clone();
        lines.push(RecipeLine { text, understood });
    }
    (parts, lines)
}

/// Adds a line to its part, which is created where there is none.
fn place(parts: &mut Vec<Part>, under: &Heading, found: &Found) -> Option<LineAt> {
    let name = plain_text::name(&under.name, Sheet::PART_NAME_LENGTH);
    let known = parts
        .iter()
        .position(|one| one.name == name && one.kind == under.kind);
    let part = known.unwrap_or(parts.len());
    if known.is_none() {
        if parts.len() >= Formula::MOST_PARTS {
            return None;
        }
        parts.push(Part {
            kind: under.kind,
            name,
            lines: Vec::new(),
            steam: Mass::ZERO,
            temperature: None,
        });
    }
    let lines = &mut parts.get_mut(part)?.lines;
    lines.push(Line::new(found.food.clone(), found.mass));
    let line = lines.len().checked_sub(1)?;
    Some(LineAt { part, line })
}

/// What it makes, where a number says so.
fn pieces(recipe: &Json) -> NonZeroU16 {
    let stated = field(recipe, "recipeYield").or_else(|| field(recipe, "yield"));
    let stated = match stated {
        Some(tree @ Json::Fields(_)) => texts(field(tree, "value")),
        other => texts(other),
    };
    let digits = stated.iter().find_map(|text| {
        let from = text.trim_start_matches(|letter: char| !letter.is_ascii_digit());
        let end = from.find(|letter: char| !letter.is_ascii_digit());
        from.get(..end.unwrap_or(from.len()))?.parse::<u16>().ok()
    });
    digits.and_then(NonZeroU16::new).unwrap_or(NonZeroU16::MIN)
}

/// Description and instructions, a paragraph each, as far as a note may go.
fn note(recipe: &Json) -> (String, bool) {
    let mut all = texts(field(recipe, "description"));
    all.extend(texts(field(recipe, "recipeInstructions")));
    let whole = all
        .iter()
        .map(|text| plain(text))
        .collect::<Vec<_>>()
        .join("\n");
    let cut = whole.chars().nth(Sheet::NOTE_LENGTH).is_some();
    (plain_text::note(&whole, Sheet::NOTE_LENGTH), cut)
}

/// Fields that say something and were not used.
fn unused(recipe: &Json) -> Vec<String> {
    let Json::Fields(fields) = recipe else {
        return Vec::new();
    };
    let keys = fields.iter().map(|(key, _)| plain_text::name(key, 40));
    keys.filter(|key| !key.starts_with('@') && !USED.contains(&key.as_str()))
        .take(40)
        .collect()
}
