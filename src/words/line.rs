//! A line in words: what is said below the name of an ingredient, and what marks a stream.

use super::manner::Manner;
use super::write;
use crate::engine::formula::Line;
use crate::engine::larder::{Food, Role};

/// What is said below an ingredient's name: its kind, what was really poured, how it counts.
#[must_use]
pub fn said(line: &Line, manner: Manner) -> String {
    let detail = match &line.food {
        Food::Listed(listed) => listed.row().detail,
        Food::Own(_) => "of your own",
    };
    let poured = line
        .poured
        .map(|poured| format!("poured {}", write::mass(poured, manner)));
    let counts = match (line.is_flour(), line.food.role() == Role::Flour) {
        (true, false) => Some("counts as flour".to_owned()),
        (false, true) => Some("not counted as flour".to_owned()),
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
