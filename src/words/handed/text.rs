//! A formula as text that anyone can read: plain, or in Markdown.

use crate::engine::formula::{Basis, LineAt, percentage};
use crate::sheet::Sheet;
use crate::words::{manner::Manner, name, say, write};

/// A formula as plain text: every stream with its weights and baker's percentages.
#[must_use]
pub fn plain_text(sheet: &Sheet, manner: Manner) -> String {
    let mut text = format!("{}\n{}\n", sheet.name, name::bread(sheet.bread));
    for (at, stream) in sheet.formula.streams.iter().enumerate() {
        text.push_str(&format!(
            "\n{} ({})\n",
            stream.name,
            name::stream_kind(stream.kind)
        ));
        for (food, mass, share) in rows(sheet, at, manner) {
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

/// A formula in Markdown: a table for each stream.
#[must_use]
pub fn markdown(sheet: &Sheet, manner: Manner) -> String {
    let mut text = format!(
        "# {}\n\n{}\n",
        escaped(&sheet.name),
        name::bread(sheet.bread)
    );
    for (at, stream) in sheet.formula.streams.iter().enumerate() {
        text.push_str(&format!(
            "\n## {}\n\n| {} | {} | {} |\n| --- | ---: | ---: |\n",
            escaped(&stream.name),
            say!("Ingredient"),
            say!("Weight"),
            say!("On all flour")
        ));
        for (food, mass, share) in rows(sheet, at, manner) {
            text.push_str(&format!("| {} | {mass} | {share} |\n", escaped(&food)));
        }
    }
    if !sheet.note.is_empty() {
        let note: Vec<String> = sheet.note.lines().map(escaped).collect();
        text.push_str(&format!("\n{}\n", note.join("\n\n")));
    }
    text
}

/// Food, weight and baker's percentage of each line of a stream.
fn rows(sheet: &Sheet, stream: usize, manner: Manner) -> Vec<(String, String, String)> {
    let lines = sheet
        .formula
        .streams
        .get(stream)
        .map(|stream| stream.lines.as_slice());
    let numbered = lines.unwrap_or_default().iter().enumerate();
    numbered
        .map(|(line, written)| {
            let found = percentage(&sheet.formula, LineAt { stream, line }, Basis::AllFlour);
            let share =
                found.map_or_else(|_| String::new(), |found| write::share(found.share, manner));
            (
                name::food(&written.food),
                write::mass(written.mass, manner),
                share,
            )
        })
        .collect()
}

/// Signs that Markdown would take for its own, held by a backslash.
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
