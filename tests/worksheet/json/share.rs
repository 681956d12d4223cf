//! Exports and imports: a table, a recipe, a square code; a recipe that was read.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use softcrumb::storage::Record;
use softcrumb::storage::interchange::{
    RecipeLine, RecipeNames, SquareCode, Understood, csv, png, read_recipe, square_code, svg,
    write_recipe,
};
use softcrumb::storage::link;
use softcrumb::text::FormatOptions;
use softcrumb::text::name::food;
use softcrumb::text::share::steps;

use crate::asked::Asked;
use crate::error::or_error;
use crate::spelling::{name, snake};

pub(super) fn to_json(asked: &Asked) -> Value {
    if !asked.class.share {
        return Value::Null;
    }
    let sheet = &asked.sheet;
    let text = link::write(sheet).unwrap_or_default();
    let text = format!("https://bread.example/#{text}");
    json!({
        "csv": csv(&sheet.formula, food),
        "recipe": write_recipe(sheet, &steps(sheet, FormatOptions::default()), food),
        "code": or_error(&square_code(&text), "", |code| json!({
            "text": text, "version": code.version, "level": snake(&code.level), "side": code.side,
            "rows": rows(code), "svg": svg(code), "png_base64": STANDARD.encode(png(code, 4)),
        })),
    })
}

/// Dark is 1.
fn rows(code: &SquareCode) -> Vec<String> {
    let letter = |dark| if dark { '1' } else { '0' };
    (0..code.side)
        .map(|row| {
            let columns = 0..code.side;
            columns
                .map(|column| letter(code.is_dark(column, row)))
                .collect()
        })
        .collect()
}

pub(super) fn recipe(asked: &Asked) -> Value {
    let Some(text) = &asked.class.recipe else {
        return Value::Null;
    };
    or_error(
        &read_recipe(text, &RecipeNames::default()),
        "recipe",
        |read| {
            json!({
                "lines": read.lines.iter().map(line).collect::<Vec<_>>(),
                "unused": read.unused, "note_cut": read.note_cut,
                "record": read.sheet.write(),
            })
        },
    )
}

fn line(line: &RecipeLine) -> Value {
    match &line.understood {
        Understood::Heading(heading) => {
            json!({ "text": line.text, "heading": snake(&heading.kind) })
        }
        Understood::Line(at, found) => json!({
            "text": line.text, "stream": at.part, "line": at.line, "food": found.food.name(),
            "own": found.own, "mass_g": found.mass.grams(), "amount": snake(&found.amount),
        }),
        Understood::Not(unread) => json!({ "text": line.text, "not": name(unread) }),
    }
}
