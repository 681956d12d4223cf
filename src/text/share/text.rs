//! A formula as plain text or Markdown.

use crate::engine::formula::{Basis, LineAt, percentage};
use crate::sheet::Sheet;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// Writes a formula as plain text: every part with its weights and baker's percentages.
#[must_use]
pub fn plain_text(sheet: &Sheet, options: FormatOptions) -> String {
    let mut text = format!("{}\n{}\n", sheet.name, name::bread(sheet.bread));
    for (at, part) in sheet.formula.parts.iter().enumerate() {
        text.push_str(&format!(
            "\n{} ({})\n",
            name::part(part),
            name::part_kind(part.kind)
        ));
        for (food, mass, share) in rows(sheet, at, options) {
            let share = if share.is_empty() {
                share
            } else {
                format!("  ({share})")
            };
            text.push_str(&format!("  {mass}  {food}{share}\n"));
        }
    }
    if !sheet.note.is_empty() {
        text.push_str(&format!("\n{}\n", sheet.note));
    }
    text
}

/// Writes a formula in Markdown, a table for each part.
#[must_use]
pub fn markdown(sheet: &Sheet, options: FormatOptions) -> String {
    let mut text = format!(
        "# {}\n\n{}\n",
        escaped(&sheet.name),
        name::bread(sheet.bread)
    );
    for (at, part) in sheet.formula.parts.iter().enumerate() {
        text.push_str(&format!(
            "\n## {}\n\n| {} | {} | {} |\n| --- | ---: | ---: |\n",
            escaped(name::part(part)),
            tr!("Ingredient"),
            tr!("Weight"),
            tr!("On all flour")
        ));
        for (food, mass, share) in rows(sheet, at, options) {
            text.push_str(&format!("| {} | {mass} | {share} |\n", escaped(&food)));
        }
    }
    if !sheet.note.is_empty() {
        let note: Vec<String> = sheet.note.lines().map(escaped).collect();
        text.push_str(&format!("\n{}\n", note.join("\n\n")));
    }
    text
}

/// Ingredient, weight and baker's percentage of each line of a part.
fn rows(sheet: &Sheet, part: usize, options: FormatOptions) -> Vec<(String, String, String)> {
    let lines = sheet
        .formula
        .parts
        .get(part)
        .map(|part| part.lines.as_slice());
    let numbered = lines.unwrap_or_default().iter().enumerate();
    numbered
        .map(|(line, written)| {
            let found = percentage(&sheet.formula, LineAt { part, line }, Basis::AllFlour);
            let share = found.map_or_else(
                |_| String::new(),
                |found| format::share(found.share, options),
            );
            (
                name::food(&written.food),
                format::mass(written.mass, options),
                share,
            )
        })
        .collect()
}

/// Escapes the characters that have a meaning in Markdown.
fn escaped(text: &str) -> String {
    let mut held = String::new();
    for letter in text.chars() {
        if matches!(
            letter,
            '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '#' | '|' | '~' | '&'
        ) {
            held.push('\\');
        }
        held.push(letter);
    }
    held
}
