//! Search among ingredients and formulas.

use crate::engine::ingredients::{Listed, Role};
use crate::sheet::{Shelf, ShelfEntry};

use super::language::text;
use super::name;

/// The ingredients of a role that a typed text finds.
#[must_use]
pub fn ingredients(typed: &str, role: Role) -> Vec<Listed> {
    let of_role = Listed::all().filter(|listed| listed.row().role == role);
    of_role.filter(|listed| finds(typed, *listed)).collect()
}

/// The formulas on the shelf whose names a typed text finds, in the order of the shelf.
#[must_use]
pub fn formulas(typed: &str, shelf: &Shelf) -> Vec<ShelfEntry> {
    let shelved = shelf.shelved().into_iter();
    let found = shelved.filter(|entry| finds_name(typed, &entry.name));
    found.cloned().collect()
}

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
