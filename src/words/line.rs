//! A line in words: what is said below the name of an ingredient, and what marks a stream.

use super::manner::Manner;
use super::write;
use crate::engine::formula::{Formula, Line, LineAt};
use crate::engine::larder::{Food, Role};
use crate::words::{language::text, name, say};

/// What is said below an ingredient's name: its kind, what was really poured, how it counts.
#[must_use]
pub fn said(line: &Line, manner: Manner) -> String {
    let detail = match &line.food {
        Food::Listed(listed) => text(listed.row().detail),
        Food::Own(_) => say!("of your own"),
    };
    let poured = line
        .poured
        .map(|poured| say!("poured {}", write::mass(poured, manner)));
    let counts = match (line.is_flour(), line.food.role() == Role::Flour) {
        (true, false) => Some(say!("counts as flour").to_owned()),
        (false, true) => Some(say!("not counted as flour").to_owned()),
        (true, true) | (false, false) => None,
    };
    let detail = (!detail.is_empty()).then(|| detail.to_owned());
    [detail, poured, counts]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join("; ")
}

/// The letter that marks a stream, by its order from zero: A, B, C, …
#[must_use]
pub fn mark(stream: usize) -> char {
    ('A'..='Z').nth(stream).unwrap_or('·')
}

/// Every line of the dough by ingredient and stream: "Whole milk (C, Final dough)".
#[must_use]
pub fn all_of_dough(formula: &Formula) -> Vec<(LineAt, String)> {
    let streams = formula.streams.iter().enumerate();
    streams
        .filter(|(_, own)| own.kind.in_dough())
        .flat_map(|(stream, own)| {
            own.lines.iter().enumerate().map(move |(line, written)| {
                let says = format!(
                    "{} ({}, {})",
                    name::food_short(&written.food),
                    mark(stream),
                    own.name
                );
                (LineAt { stream, line }, says)
            })
        })
        .collect()
}
