//! Spelling: the name of a choice in the results.

use std::fmt::Debug;

use softcrumb::engine::formula::Figure;

/// The name of a variant, in small letters with underlines: `TrueWater` is `true_water`.
pub(crate) fn snake(value: &impl Debug) -> String {
    let mut spelt = String::new();
    for letter in name(value).chars() {
        if letter.is_ascii_uppercase() && !spelt.is_empty() {
            spelt.push('_');
        }
        spelt.push(letter.to_ascii_lowercase());
    }
    spelt
}

/// The name of a variant, without what it holds.
pub(crate) fn name(value: &impl Debug) -> String {
    let all = format!("{value:?}");
    all.chars()
        .take_while(char::is_ascii_alphanumeric)
        .collect()
}

/// The figure of that name.
pub(crate) fn figure(word: &str) -> Option<Figure> {
    Figure::ALL.into_iter().find(|figure| snake(figure) == word)
}
