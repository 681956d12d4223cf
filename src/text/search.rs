//! Search among ingredients and formulas.

use crate::engine::ingredients::{Listed, Role};
use crate::sheet::{Language, Shelf, ShelfEntry};
use crate::storage::interchange::{folded, is_japanese, meant, other_names};

use super::language::text;
use super::{name, tr};

/// What ingredients are also called, or the nearest of the table to what is asked for.
const ALSO: &[(u16, &str)] = &[
    (1, "sourdough starter levain manitoba"),
    (2, "all-purpose ap"),
    (4, "whole wheat wholewheat sourdough starter"),
    (41, "sourdough starter"),
    (100, "cornstarch"),
    (200, "sourdough starter"),
    (303, "skim nonfat"),
    (311, "yogurt"),
    (320, "single"),
    (322, "double heavy"),
    (323, "sour"),
    (500, "sweet"),
    (520, "vegetable canola neutral"),
    (600, "eggs"),
    (601, "eggs"),
    (602, "eggs"),
    (700, "granulated caster castor"),
    (701, "muscovado"),
    (702, "demerara"),
    (703, "powdered confectioners"),
    (711, "black treacle"),
    (713, "golden syrup glucose"),
    (715, "malt extract"),
    (810, "baking soda"),
    (901, "dried"),
    (902, "dried easy fast-action quick rapid bread machine"),
    (1001, "bittersweet"),
    (1004, "chips drops"),
    (1010, "chips"),
    (1012, "chips"),
    (1021, "dutch"),
    (1200, "sultanas currants"),
];

/// The ingredients of a role.
#[must_use]
pub fn of_role(role: Role) -> Vec<Listed> {
    let of_role = Listed::all().filter(|listed| listed.row().role == role);
    of_role.collect()
}

/// The ingredients that a typed text finds, in the words of the page's language: the one that it
/// means first, then those that are called exactly so.
#[must_use]
pub fn ingredients(typed: &str, language: Language) -> Vec<Listed> {
    let meant = match language {
        Language::English => None,
        Language::Spanish | Language::Japanese => meant(typed, language),
    };
    let rank = |listed: Listed| match rank(typed, text(listed.row().name)) {
        0 => 0,
        _ if meant == Some(listed) => 1,
        other => other.saturating_add(1),
    };
    let mut found: Vec<(u8, Listed)> = Listed::all()
        .filter(|listed| meant == Some(*listed) || finds(typed, *listed, language))
        .map(|listed| (rank(listed), listed))
        .collect();
    // Equal ranks stay in the order of the table.
    found.sort_by_key(|(rank, _)| *rank);
    found.into_iter().map(|(_, listed)| listed).collect()
}

/// What to do for something that is no ingredient but a part of its own.
#[must_use]
pub fn hint(typed: &str) -> Option<&'static str> {
    let typed = words(typed);
    let is_starter = |word: &String| {
        matches!(
            word.as_str(),
            "sourdough" | "starter" | "levain" | "madre" | "サワー種" | "ルヴァン" | "ルヴァン種"
        )
    };
    typed.iter().any(is_starter).then(|| {
        tr!("A sourdough starter is flour and water: add both here, or a preferment of its own.")
    })
}

/// The formulas on the shelf whose names a typed text finds, in the order of the shelf.
#[must_use]
pub fn formulas(typed: &str, shelf: &Shelf) -> Vec<ShelfEntry> {
    let shelved = shelf.shelved().into_iter();
    let found = shelved.filter(|entry| finds_name(typed, &entry.name));
    found.cloned().collect()
}

/// Whether each typed word begins a word of the ingredient's name, detail, role or other names.
#[must_use]
pub fn finds(typed: &str, listed: Listed, language: Language) -> bool {
    let row = listed.row();
    let also = ALSO.iter().find(|(number, _)| *number == row.number);
    finds_name(
        typed,
        &format!(
            "{} {} {} {} {} {} {}",
            row.name,
            row.detail,
            text(row.name),
            text(row.detail),
            name::role(row.role),
            also.map_or("", |(_, also)| also),
            other_names(row.number, language).join(" ")
        ),
    )
}

/// Whether each typed word begins a word of a name. Japanese has no spaces between words: there a
/// typed word may be anywhere in it.
#[must_use]
pub fn finds_name(typed: &str, name: &str) -> bool {
    let words = words(name);
    self::words(typed)
        .iter()
        .all(|wanted| words.iter().any(|word| begins(word, wanted)))
}

fn begins(word: &str, wanted: &str) -> bool {
    word.starts_with(wanted) || (wanted.contains(is_japanese) && word.contains(wanted))
}

/// How closely a name is what was typed: 0 for the name itself.
fn rank(typed: &str, name: &str) -> u8 {
    let (typed, name) = (words(typed), words(name));
    let is_word = |wanted: &String| name.contains(wanted);
    let begins = |wanted: &String| name.iter().any(|word| begins(word, wanted));
    if typed == name {
        0
    } else if name.starts_with(&typed) {
        1
    } else if typed.iter().all(is_word) {
        2
    } else if typed.iter().all(begins) {
        3
    } else {
        4
    }
}

/// The words of a text, in small letters without accents; words that only join others are left out
/// where others are there.
fn words(text: &str) -> Vec<String> {
    let whole = folded(text);
    let words = whole.split(|letter: char| !letter.is_alphanumeric());
    let all: Vec<String> = words
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect();
    let tells = |word: &&String| !matches!(word.as_str(), "de" | "del" | "la");
    if all.iter().any(|word| tells(&word)) {
        all.into_iter().filter(|word| tells(&word)).collect()
    } else {
        all
    }
}
