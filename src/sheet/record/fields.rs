//! Fields: taking a tree apart, each failure with the way to it.

use crate::engine::quantity::{self, Factor, Mass, Minutes, OutOfRange, Share, Temperature};

use super::error::{Expected, RecordError, RecordFault};
use super::tree::Tree;

type Read<T> = Result<T, RecordError>;

/// The fields in one pair of braces, known to be those allowed there, each at most once.
pub(super) struct Fields<'t>(Vec<(&'static str, &'t Tree<'t>)>);

impl<'t> Fields<'t> {
    /// Takes `tree` apart; `known` are the keys it may have.
    pub(super) fn of(tree: &'t Tree<'t>, known: &[&'static str]) -> Read<Self> {
        let Tree::Fields(pairs) = tree else {
            return Err(wrong(Expected::Fields));
        };
        let mut found: Vec<(&'static str, &Tree)> =
            Vec::with_capacity(pairs.len().min(known.len()));
        for (key, value) in pairs {
            let Some(known) = known.iter().find(|known| *known == key) else {
                let short: String = key.chars().take(40).collect();
                return Err(RecordError::from(RecordFault::UnknownField).inside(&short));
            };
            if found.iter().any(|(already, _)| already == known) {
                return Err(RecordError::from(RecordFault::Twice).inside(known));
            }
            found.push((known, value));
        }
        Ok(Self(found))
    }

    fn get(&self, key: &str) -> Option<&'t Tree<'t>> {
        self.0
            .iter()
            .find(|(k, _)| *k == key)
            .map(|(_, tree)| *tree)
    }

    /// A field that must be there.
    pub(super) fn needed<T>(
        &self,
        key: &str,
        read: impl FnOnce(&'t Tree<'t>) -> Read<T>,
    ) -> Read<T> {
        match self.get(key) {
            Some(tree) => read(tree).map_err(|error| error.inside(key)),
            None => Err(RecordError::from(RecordFault::Missing).inside(key)),
        }
    }

    /// A field that may be left out, or be null.
    pub(super) fn maybe<T>(
        &self,
        key: &str,
        read: impl FnOnce(&'t Tree<'t>) -> Read<T>,
    ) -> Read<Option<T>> {
        match self.get(key) {
            None | Some(Tree::Nothing) => Ok(None),
            Some(tree) => read(tree).map(Some).map_err(|error| error.inside(key)),
        }
    }
}

fn wrong(wanted: Expected) -> RecordError {
    RecordFault::WrongType { wanted }.into()
}

/// A list of at most `most` items.
pub(super) fn list<'t, T>(
    tree: &'t Tree<'t>,
    most: usize,
    read: impl Fn(&'t Tree<'t>) -> Read<T>,
) -> Read<Vec<T>> {
    let Tree::List(items) = tree else {
        return Err(wrong(Expected::List));
    };
    if items.len() > most {
        return Err(RecordFault::TooMany { most }.into());
    }
    let numbered = items.iter().enumerate();
    numbered
        .map(|(at, item)| read(item).map_err(|error| error.item(at)))
        .collect()
}

/// Any number.
pub(super) fn number(tree: &Tree) -> Read<f64> {
    match tree {
        Tree::Number(number) => Ok(*number),
        Tree::Nothing | Tree::Truth(_) | Tree::Text(_) | Tree::List(_) | Tree::Fields(_) => {
            Err(wrong(Expected::Number))
        }
    }
}

/// A whole number from `least` to `most`.
pub(super) fn whole(tree: &Tree, least: u32, most: u32) -> Read<u32> {
    let value = number(tree)?;
    let range = f64::from(least)..=f64::from(most);
    if !range.contains(&value) {
        return Err(OutOfRange { value, range }.into());
    }
    let found = quantity::whole(value);
    if f64::from(found) < value {
        return Err(RecordFault::NotWhole { value }.into());
    }
    Ok(found)
}

/// Any text.
pub(super) fn text<'t>(tree: &'t Tree<'t>) -> Read<&'t str> {
    match tree {
        Tree::Text(text) => Ok(text),
        Tree::Nothing | Tree::Truth(_) | Tree::Number(_) | Tree::List(_) | Tree::Fields(_) => {
            Err(wrong(Expected::Text))
        }
    }
}

/// A text of at most `most` characters, made plain by `plain`.
pub(super) fn short(tree: &Tree, most: usize, plain: fn(&str, usize) -> String) -> Read<String> {
    let text = text(tree)?;
    if text.chars().nth(most).is_some() {
        return Err(RecordFault::TooLong { most }.into());
    }
    Ok(plain(text, most))
}

/// Yes or no.
pub(super) fn truth(tree: &Tree) -> Read<bool> {
    if let Tree::Truth(truth) = tree {
        Ok(*truth)
    } else {
        Err(wrong(Expected::Truth))
    }
}

/// One of the words in `table`.
pub(super) fn word<T: Copy>(tree: &Tree, table: &[(T, &str)]) -> Read<T> {
    let word = text(tree)?;
    let found = table.iter().find(|(_, known)| *known == word);
    found.map(|(value, _)| *value).ok_or_else(|| {
        let word = word.chars().take(40).collect();
        RecordFault::UnknownWord { word }.into()
    })
}

/// Grams.
pub(super) fn mass(tree: &Tree) -> Read<Mass> {
    Ok(Mass::from_grams(number(tree)?)?)
}

/// A fraction of the whole.
pub(super) fn share(tree: &Tree) -> Read<Share> {
    Ok(Share::from_fraction(number(tree)?)?)
}

/// A plain factor.
pub(super) fn factor(tree: &Tree) -> Read<Factor> {
    Ok(Factor::from_number(number(tree)?)?)
}

/// Degrees Celsius.
pub(super) fn temperature(tree: &Tree) -> Read<Temperature> {
    Ok(Temperature::from_celsius(number(tree)?)?)
}

/// Minutes.
pub(super) fn minutes(tree: &Tree) -> Read<Minutes> {
    Ok(Minutes::from_minutes(number(tree)?)?)
}
