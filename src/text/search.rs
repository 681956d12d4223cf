//! Search among ingredients and formulas.

use crate::engine::ingredients::Listed;

use super::language::text;
use super::name;

/// Whether each typed word begins a word of the ingredient's name, detail or role.
#[must_use]
pub fn finds(typed: &str, listed: Listed) -> bool {
    let row = listed.row();
    finds_name(
        typed,
        &format!(
            "{} {} {} {} {}",
            row.name,
            row.detail,
            text(row.name),
            text(row.detail),
            name::role(row.role)
        ),
    )
}

/// Whether each typed word begins a word of a name.
#[must_use]
pub fn finds_name(typed: &str, name: &str) -> bool {
    let whole = name.to_lowercase();
    let words: Vec<&str> = whole
        .split(|letter: char| !letter.is_alphanumeric())
        .collect();
    typed
        .to_lowercase()
        .split_whitespace()
        .all(|wanted| words.iter().any(|word| word.starts_with(wanted)))
}
