//! What can be wrong with a record, and where in it.

use std::convert::Infallible;

use crate::engine::ingredients::LabelError;
use crate::engine::quantity::{NoSuchDivision, OutOfRange};

/// A record that cannot be opened: what is wrong, and where.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{path}: {fault}")]
pub struct RecordError {
    /// Where in the record, as `formula.parts[1].lines[3].mass_g`; empty for the whole.
    pub path: String,
    /// What is wrong there.
    pub fault: RecordFault,
}

/// What is wrong with a record.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RecordFault {
    /// More text than is read at all; nothing of it was looked at.
    #[error("{bytes} bytes, more than {most}")]
    TooLarge {
        /// How long it is.
        bytes: usize,
        /// The most that is read.
        most: usize,
    },
    /// There is nothing in it.
    #[error("empty")]
    Empty,
    /// The text is not JSON, from this line and column on (both from one): cut short or damaged.
    #[error("not JSON at line {line}, column {column}")]
    Damaged {
        /// Which line.
        line: usize,
        /// Which column.
        column: usize,
    },
    /// It does not say that it is ours.
    #[error("no record of ours")]
    NotOurs,
    /// It is ours, but something else than was asked for.
    #[error("another kind of record: {found}")]
    OtherKind {
        /// What it says it is.
        found: String,
    },
    /// Written by a later release than this one. It must be left unchanged.
    #[error("version {version} is newer than this release")]
    Newer {
        /// Its version.
        version: u32,
    },
    /// A version that no release has written.
    #[error("no release wrote this version")]
    NoSuchVersion,
    /// A field that must be there is not.
    #[error("missing")]
    Missing,
    /// A field that this version does not have.
    #[error("unknown field")]
    UnknownField,
    /// The same field twice, so that nobody can say which is meant.
    #[error("there twice")]
    Twice,
    /// Another kind of value: text for a number, say.
    #[error("expected {wanted}")]
    WrongType {
        /// What was expected there.
        wanted: Expected,
    },
    /// A number outside the range of its quantity.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A label of an own ingredient that cannot be true.
    #[error(transparent)]
    Label(#[from] LabelError),
    /// A division that no scale has.
    #[error(transparent)]
    Division(#[from] NoSuchDivision),
    /// A ring tin whose tube leaves no room.
    #[error("the tube fills the tin")]
    NoRoom,
    /// A dough of a known rise that has no yeast.
    #[error("no yeast")]
    NoYeast,
    /// A number that must be whole is not.
    #[error("{value} is not a whole number")]
    NotWhole {
        /// The number as written.
        value: f64,
    },
    /// More characters than the text may have.
    #[error("more than {most} characters")]
    TooLong {
        /// The most there may be.
        most: usize,
    },
    /// More items than the list may have.
    #[error("more than {most} items")]
    TooMany {
        /// The most there may be.
        most: usize,
    },
    /// An ingredient that this release does not know.
    #[error("no ingredient has the number {number}")]
    UnknownIngredient {
        /// Its number.
        number: u16,
        /// What the record calls it.
        name: String,
    },
    /// A word that is not one of those allowed there.
    #[error("unknown word {word}")]
    UnknownWord {
        /// The word.
        word: String,
    },
    /// A photo that is no small picture.
    #[error("not a photo")]
    NotAPhoto,
    /// A formula's key that is not one of ours.
    #[error("not a key")]
    BadId,
}

/// What was expected in a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Expected {
    /// A number.
    Number,
    /// A text.
    Text,
    /// A list.
    List,
    /// Yes or no.
    Truth,
    /// Fields in braces.
    Fields,
}

impl std::fmt::Display for Expected {
    fn fmt(&self, f: &mut std::fmt::Formatter) -> std::fmt::Result {
        f.write_str(match self {
            Self::Number => "a number",
            Self::Text => "a text",
            Self::List => "a list",
            Self::Truth => "true or false",
            Self::Fields => "fields",
        })
    }
}

impl RecordError {
    /// The same fault, seen from outside the field `key`.
    #[must_use]
    pub(super) fn inside(mut self, key: &str) -> Self {
        self.path = match self.path.as_str() {
            "" => key.to_owned(),
            deeper if deeper.starts_with('[') => format!("{key}{deeper}"),
            deeper => format!("{key}.{deeper}"),
        };
        self
    }

    /// The same fault, seen from outside item `at` of a list.
    #[must_use]
    pub(super) fn item(self, at: usize) -> Self {
        self.inside(&format!("[{at}]"))
    }
}

impl RecordFault {
    /// This fault, in the field `key`.
    #[must_use]
    pub(super) fn at(self, key: &str) -> RecordError {
        RecordError::from(self).inside(key)
    }
}

impl From<Infallible> for RecordError {
    fn from(never: Infallible) -> Self {
        match never {}
    }
}

impl From<RecordFault> for RecordError {
    fn from(fault: RecordFault) -> Self {
        Self {
            path: String::new(),
            fault,
        }
    }
}

impl From<OutOfRange> for RecordError {
    fn from(error: OutOfRange) -> Self {
        RecordFault::from(error).into()
    }
}

impl From<LabelError> for RecordError {
    fn from(error: LabelError) -> Self {
        RecordFault::from(error).into()
    }
}

impl From<NoSuchDivision> for RecordError {
    fn from(error: NoSuchDivision) -> Self {
        RecordFault::from(error).into()
    }
}
