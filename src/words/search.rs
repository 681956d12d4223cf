//! Searching: whether an ingredient is meant by what was typed.

use crate::engine::larder::Listed;

use super::name;

/// Whether each word that was typed begins a word of the ingredient's name, detail or role.
#[must_use]
pub fn finds(typed: &str, listed: Listed) -> bool {
    let row = listed.row();
    let whole = format!("{} {} {}", row.name, row.detail, name::role(row.role)).to_lowercase();
    let words: Vec<&str> = whole
        .split(|letter: char| !letter.is_alphanumeric())
        .collect();
    typed
        .to_lowercase()
        .split_whitespace()
        .all(|wanted| words.iter().any(|word| word.starts_with(wanted)))
}
