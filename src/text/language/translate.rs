//! The language of this thread, and texts in it.

use std::borrow::Cow;
use std::cell::Cell;
use std::fmt::{Display, Write};

use super::catalogue::Catalogue;

thread_local! {
    /// The catalogue of the language in use; none for English.
    static CATALOGUE: Cell<Option<&'static Catalogue>> = const { Cell::new(None) };
}

/// Takes texts out of `catalogue` from now on; without one, they are in English.
pub fn set_catalogue(catalogue: Option<&'static Catalogue>) {
    CATALOGUE.set(catalogue);
}

/// Translates a text; returns it in English where the catalogue lacks it.
#[must_use]
pub fn text(english: &'static str) -> &'static str {
    CATALOGUE
        .get()
        .and_then(|catalogue| catalogue.find(english))
        .unwrap_or(english)
}

/// Translates a text that is known at run time only.
#[must_use]
pub fn tr_dynamic(english: &str) -> Cow<'_, str> {
    let found = CATALOGUE
        .get()
        .and_then(|catalogue| catalogue.find(english));
    found.map_or(Cow::Borrowed(english), Cow::Borrowed)
}

/// Translates a text and fills its places in braces. The values stand in the order in which the
/// places first appear in the English text.
///
/// A placeholder of the translation that the English text lacks is left empty; the build refuses
/// such a translation.
#[must_use]
pub fn filled(english: &'static str, values: &[&dyn Display]) -> String {
    let mut names: Vec<&str> = Vec::with_capacity(values.len());
    for (_, name) in pieces(english) {
        if let Some(name) = name
            && !names.contains(&name)
        {
            names.push(name);
        }
    }
    let mut filled = String::with_capacity(english.len() * 2);
    for (before, name) in pieces(text(english)) {
        filled.push_str(before);
        let place = name.and_then(|name| names.iter().position(|own| *own == name));
        if let Some(value) = place.and_then(|place| values.get(place)) {
            // Writing into a String never fails.
            let _written = write!(filled, "{value}");
        }
    }
    filled
}

/// Splits a text at its placeholders in braces: the text before each, and its name; none at the
/// end.
fn pieces(text: &str) -> impl Iterator<Item = (&str, Option<&str>)> {
    let mut rest = Some(text);
    std::iter::from_fn(move || {
        let found = rest?;
        let Some((before, place)) = found.split_once('{') else {
            rest = None;
            return Some((found, None));
        };
        let Some((name, after)) = place.split_once('}') else {
            rest = Some(place);
            return Some((before, None));
        };
        rest = Some(after);
        Some((before, Some(name)))
    })
}
