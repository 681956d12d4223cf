//! Spoken: the language of this thread, and texts in it.

use std::borrow::Cow;
use std::cell::Cell;
use std::fmt::{Display, Write};

use super::catalogue::Catalogue;

thread_local! {
    /// The catalogue of the language that is spoken; none for English.
    static SPOKEN: Cell<Option<&'static Catalogue>> = const { Cell::new(None) };
}

/// From now on texts come out of this catalogue; out of none, in English.
pub fn speak(catalogue: Option<&'static Catalogue>) {
    SPOKEN.set(catalogue);
}

/// A text in the language that is spoken; as it stands where that language has none.
#[must_use]
pub fn text(english: &'static str) -> &'static str {
    SPOKEN
        .get()
        .and_then(|catalogue| catalogue.find(english))
        .unwrap_or(english)
}

/// The same for a text that is only known while the page runs.
#[must_use]
pub fn told(english: &str) -> Cow<'_, str> {
    let found = SPOKEN.get().and_then(|catalogue| catalogue.find(english));
    found.map_or(Cow::Borrowed(english), Cow::Borrowed)
}

/// A text in the language that is spoken, its places in braces filled.
///
/// A place goes by its name or, where it has none, by its number in the English text; a place
/// that the English text does not have stays empty.
#[must_use]
pub fn filled(english: &'static str, values: &[&dyn Display]) -> String {
    let names = names(english);
    let mut written = String::with_capacity(english.len() * 2);
    let mut nameless = 0_usize;
    for (before, name) in places(text(english)) {
        written.push_str(before);
        let Some(name) = name else { continue };
        let at = if name.is_empty() {
            nameless += 1;
            names.iter().position(|own| *own == Name::Number(nameless))
        } else {
            names.iter().position(|own| own.is(name))
        };
        if let Some(value) = at.and_then(|at| values.get(at)) {
            // Writing into a text never fails.
            let _written = write!(written, "{value}");
        }
    }
    written
}

/// What a place in braces goes by.
#[derive(Clone, Copy, PartialEq)]
enum Name<'a> {
    /// A name: `{hot}`.
    Word(&'a str),
    /// None, `{}`: its number among those without one, from 1.
    Number(usize),
}

impl Name<'_> {
    /// Whether a translation means this place by `name`.
    fn is(self, name: &str) -> bool {
        match self {
            Self::Word(own) => own == name,
            Self::Number(own) => name.parse() == Ok(own),
        }
    }
}

/// What the places of an English text go by, each once, in the order of their values.
fn names(english: &str) -> Vec<Name<'_>> {
    let mut names = Vec::new();
    let mut nameless = 0_usize;
    for name in places(english).filter_map(|(_, name)| name) {
        let name = if name.is_empty() {
            nameless += 1;
            Name::Number(nameless)
        } else {
            Name::Word(name)
        };
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names
}

/// A text cut at its places: what stands before each, and its name; none behind the last.
fn places(text: &str) -> impl Iterator<Item = (&str, Option<&str>)> {
    text.split('{').enumerate().flat_map(|(at, piece)| {
        let (name, after) = match piece.split_once('}') {
            Some((name, after)) if at > 0 => (Some(name), after),
            Some(_) | None => (None, piece),
        };
        let place = name.map(|name| ("", Some(name)));
        place.into_iter().chain(std::iter::once((after, None)))
    })
}
