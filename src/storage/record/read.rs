//! Reading: from JSON through record structs to sheet types, each failure with the way to it.

use std::fmt;
use std::marker::PhantomData;

use serde::de::{DeserializeSeed, IgnoredAny, IntoDeserializer, MapAccess, Visitor};
use serde::{Deserialize, Deserializer};
use serde_path_to_error::{Segment, Track};

use super::error::{Expected, RecordError, RecordFault};
use super::head::{KIND, VERSION};
use super::refused;

/// What is written as fields in braces.
pub(super) trait InBraces<'de>: Sized {
    /// Takes the fields.
    fn from_fields<A: MapAccess<'de>>(fields: A) -> Result<Self, A::Error>;
}

/// Types whose record struct describes them field by field (`remote` in serde's words).
macro_rules! described {
    ($($of:ty: $record:ty;)+) => {$(
        impl serde::Serialize for $of {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                <$record>::serialize(self, to)
            }
        }

        impl<'de> $crate::storage::record::read::InBraces<'de> for $of {
            fn from_fields<A: serde::de::MapAccess<'de>>(fields: A) -> Result<Self, A::Error> {
                <$record>::deserialize(serde::de::value::MapAccessDeserializer::new(fields))
            }
        }

        $crate::storage::record::read::in_braces! { $of }
    )+};
}
pub(super) use described;

/// Types that are turned into a record struct to be written, and made from it by `TryFrom`.
macro_rules! converted {
    ($($of:ty: $record:ty;)+) => {$(
        impl serde::Serialize for $of {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                <$record>::from(self).serialize(to)
            }
        }

        impl<'de> $crate::storage::record::read::InBraces<'de> for $of {
            fn from_fields<A: serde::de::MapAccess<'de>>(fields: A) -> Result<Self, A::Error> {
                let fields = serde::de::value::MapAccessDeserializer::new(fields);
                let record = <$record as serde::Deserialize>::deserialize(fields)?;
                Self::try_from(record).map_err($crate::storage::record::refused::refuse)
            }
        }

        $crate::storage::record::read::in_braces! { $of }
    )+};
}
pub(super) use converted;

/// Reads a type from braces, and from nothing else.
macro_rules! in_braces {
    ($of:ty) => {
        impl<'de> serde::Deserialize<'de> for $of {
            fn deserialize<D: serde::Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                from.deserialize_map($crate::storage::record::read::Braces::new())
            }
        }
    };
}
pub(super) use in_braces;

/// Takes fields in braces; a list in their place is refused.
pub(super) struct Braces<T>(PhantomData<T>);

impl<T> Braces<T> {
    pub(super) const fn new() -> Self {
        Self(PhantomData)
    }
}

impl<'de, T: InBraces<'de>> Visitor<'de> for Braces<T> {
    type Value = T;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("fields")
    }

    fn visit_map<A: MapAccess<'de>>(self, fields: A) -> Result<T, A::Error> {
        T::from_fields(fields)
    }
}

/// Reads a part of a record, as its JSON.
pub(super) fn part<'t, T: Deserialize<'t>>(json: &'t str) -> Result<T, RecordError> {
    traced(json, PhantomData::<T>)
}

/// Reads what a record holds beside its kind and version.
pub(super) fn body<'t, T: InBraces<'t>>(json: &'t str) -> Result<T, RecordError> {
    traced(json, Body(PhantomData::<T>))
}

fn traced<'t, S: DeserializeSeed<'t>>(json: &'t str, seed: S) -> Result<S::Value, RecordError> {
    let mut track = Track::new();
    let mut reader = serde_json::Deserializer::from_str(json);
    let traced = serde_path_to_error::Deserializer::new(&mut reader, &mut track);
    let read = seed.deserialize(traced);
    read.map_err(|error| {
        let way = track.path();
        let found = way.iter().rev();
        found.fold(fault(&error), |error, segment| match segment {
            Segment::Seq { index } => error.item(*index),
            Segment::Map { key } | Segment::Enum { variant: key } => error.inside(&shortened(key)),
            Segment::Unknown => error,
        })
    })
}

fn shortened(key: &str) -> String {
    key.chars().take(40).collect()
}

/// What serde's text says is wrong; the way to it is not yet in it, except for a field's own key.
fn fault(error: &serde_json::Error) -> RecordError {
    let (line, column) = (error.line(), error.column());
    let text = error.to_string();
    let text = text
        .strip_suffix(&format!(" at line {line} column {column}"))
        .unwrap_or(&text);
    if text == refused::MARK
        && let Some(refused) = refused::take()
    {
        return refused;
    }
    let key = || text.split('`').nth(1).unwrap_or_default();
    if text.starts_with("missing field") {
        return RecordError::from(RecordFault::Missing).inside(key());
    }
    if text.starts_with("duplicate field") {
        return RecordError::from(RecordFault::Twice).inside(key());
    }
    if text.starts_with("unknown field") {
        return RecordFault::UnknownField.into();
    }
    let wanted = text.rsplit(", expected ").next().and_then(wanted);
    match wanted.filter(|_| text.starts_with("invalid type")) {
        Some(wanted) => RecordFault::WrongType { wanted }.into(),
        None => RecordFault::Damaged { line, column }.into(),
    }
}

/// What serde's words for a type mean.
fn wanted(words: &str) -> Option<Expected> {
    Some(match words {
        "f64" => Expected::Number,
        "a string" => Expected::Text,
        "a boolean" => Expected::Truth,
        "a sequence" => Expected::List,
        "fields" => Expected::Fields,
        _ => return None,
    })
}

/// The fields of a whole record.
struct Body<T>(PhantomData<T>);

impl<'de, T: InBraces<'de>> DeserializeSeed<'de> for Body<T> {
    type Value = T;

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<T, D::Error> {
        from.deserialize_map(self)
    }
}

impl<'de, T: InBraces<'de>> Visitor<'de> for Body<T> {
    type Value = T;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("fields")
    }

    fn visit_map<A: MapAccess<'de>>(self, fields: A) -> Result<T, A::Error> {
        T::from_fields(WithoutHead(fields))
    }
}

/// Fields without kind and version, which are known by then.
struct WithoutHead<A>(A);

impl<'de, A: MapAccess<'de>> MapAccess<'de> for WithoutHead<A> {
    type Error = A::Error;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, A::Error> {
        while let Some(key) = self.0.next_key::<String>()? {
            if key == KIND || key == VERSION {
                self.0.next_value::<IgnoredAny>()?;
                continue;
            }
            let known = seed.deserialize(key.as_str().into_deserializer());
            return known.map(Some).map_err(|_: A::Error| {
                let unknown = RecordError::from(RecordFault::UnknownField);
                refused::refuse(unknown.inside(&shortened(&key)))
            });
        }
        Ok(None)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, A::Error> {
        self.0.next_value_seed(seed)
    }
}
