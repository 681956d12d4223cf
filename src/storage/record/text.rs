//! Texts, lists and words in records, each within its limit.

use std::fmt;
use std::marker::PhantomData;

use serde::de::{IgnoredAny, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::sheet::{Id, plain};

use super::error::RecordFault;
use super::refused::refuse;

/// A name on one line of at most `MOST` characters, cleaned when read and when written.
pub(super) struct Name<const MOST: usize>;

impl<const MOST: usize> Name<MOST> {
    pub(super) fn serialize<S: Serializer>(name: &str, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(&plain::name(name, MOST))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<String, D::Error> {
        short(from, MOST).map(|text| plain::name(&text, MOST))
    }
}

/// A note of at most `MOST` characters, cleaned when read and when written.
pub(super) struct Note<const MOST: usize>;

impl<const MOST: usize> Note<MOST> {
    pub(super) fn serialize<S: Serializer>(note: &str, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(&plain::note(note, MOST))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<String, D::Error> {
        short(from, MOST).map(|text| plain::note(&text, MOST))
    }
}

fn short<'de, D: Deserializer<'de>>(from: D, most: usize) -> Result<String, D::Error> {
    let text = String::deserialize(from)?;
    if text.chars().nth(most).is_some() {
        return Err(refuse(RecordFault::TooLong { most }));
    }
    Ok(text)
}

/// A list of at most `MOST` items.
pub(super) struct List<const MOST: usize>;

impl<const MOST: usize> List<MOST> {
    pub(super) fn serialize<S: Serializer, T: Serialize>(
        items: &[T],
        to: S,
    ) -> Result<S::Ok, S::Error> {
        to.collect_seq(items)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>, T: Deserialize<'de>>(
        from: D,
    ) -> Result<Vec<T>, D::Error> {
        from.deserialize_seq(Items {
            most: MOST,
            of: PhantomData,
        })
    }
}

/// Takes the items of a list.
struct Items<T> {
    most: usize,
    of: PhantomData<T>,
}

impl<'de, T: Deserialize<'de>> Visitor<'de> for Items<T> {
    type Value = Vec<T>;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("a sequence")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut from: A) -> Result<Vec<T>, A::Error> {
        let mut items = Vec::new();
        while items.len() < self.most {
            match from.next_element()? {
                Some(item) => items.push(item),
                None => return Ok(items),
            }
        }
        match from.next_element::<IgnoredAny>()? {
            Some(_) => Err(refuse(RecordFault::TooMany { most: self.most })),
            None => Ok(items),
        }
    }
}

/// One of the words in `table`.
pub(super) fn word<'de, D: Deserializer<'de>, T: Copy>(
    from: D,
    table: &[(T, &str)],
) -> Result<T, D::Error> {
    let word = String::deserialize(from)?;
    let found = table.iter().find(|(_, known)| *known == word);
    found.map(|(value, _)| *value).ok_or_else(|| {
        let word = word.chars().take(40).collect();
        refuse(RecordFault::UnknownWord { word })
    })
}

/// Choices with the tables of their words.
macro_rules! words {
    ($($choice:ty: $table:expr;)+) => {$(
        impl serde::Serialize for $choice {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.serialize_str($crate::storage::enum_names::spelt(*self, $table))
            }
        }

        impl<'de> serde::Deserialize<'de> for $choice {
            fn deserialize<D: serde::Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                $crate::storage::record::text::word(from, $table)
            }
        }
    )+};
}
pub(super) use words;

impl Serialize for Id {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(self.as_text())
    }
}

impl<'de> Deserialize<'de> for Id {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let id = Self::from_text(&String::deserialize(from)?);
        id.ok_or_else(|| refuse(RecordFault::BadId))
    }
}
