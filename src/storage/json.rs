//! JSON as it was read: every key kept, in the order written, doubled ones included.

use crate::engine::numerics::float_from_u64;
use std::borrow::Cow;
use std::cell::Cell;
use std::fmt;

use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};

/// One value of a JSON text.
#[derive(Clone, Debug, PartialEq)]
pub enum Json<'t> {
    /// `null`.
    Nothing,
    /// `true` or `false`.
    Truth(bool),
    /// A number; JSON has no NaN or infinity, and a number too large for `f64` is refused.
    Number(f64),
    /// A text.
    Text(Cow<'t, str>),
    /// A list.
    List(Vec<Json<'t>>),
    /// Keys with their values, in the order written, doubled keys included.
    Fields(Vec<(Cow<'t, str>, Json<'t>)>),
}

/// The most values one text may hold; a full browser storage holds about a third of it.
const MOST_VALUES: usize = 1_000_000;

impl<'t> Json<'t> {
    /// Reads a JSON text (RFC 8259); nesting deeper than 128 is refused.
    ///
    /// # Errors
    /// The line and column, both from one, at which the text stops being JSON.
    pub fn parse(text: &'t str) -> Result<Self, (usize, usize)> {
        let left = Cell::new(MOST_VALUES);
        let mut reader = serde_json::Deserializer::from_str(text);
        Seed { left: &left }
            .deserialize(&mut reader)
            .and_then(|tree| reader.end().map(|()| tree))
            .map_err(|error| (error.line(), error.column()))
    }
}

/// Reads one value, counting down how many are still allowed.
#[derive(Clone, Copy)]
struct Seed<'c> {
    left: &'c Cell<usize>,
}

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Json<'de>;

    fn deserialize<D: Deserializer<'de>>(self, reader: D) -> Result<Json<'de>, D::Error> {
        let left = self.left.get();
        self.left.set(left.saturating_sub(1));
        if left == 0 {
            return Err(D::Error::custom("too many values"));
        }
        reader.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Seed<'_> {
    type Value = Json<'de>;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Json<'de>, E> {
        Ok(Json::Nothing)
    }

    fn visit_bool<E>(self, truth: bool) -> Result<Json<'de>, E> {
        Ok(Json::Truth(truth))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Json<'de>, E> {
        Ok(Json::Number(number))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Json<'de>, E> {
        Ok(Json::Number(float_from_u64(number)))
    }

    fn visit_i64<E>(self, number: i64) -> Result<Json<'de>, E> {
        let size = float_from_u64(number.unsigned_abs());
        Ok(Json::Number(if number < 0 { -size } else { size }))
    }

    fn visit_str<E>(self, text: &str) -> Result<Json<'de>, E> {
        Ok(Json::Text(Cow::Owned(text.to_owned())))
    }

    fn visit_borrowed_str<E>(self, text: &'de str) -> Result<Json<'de>, E> {
        Ok(Json::Text(Cow::Borrowed(text)))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Json<'de>, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element_seed(self)? {
            list.push(item);
        }
        Ok(Json::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut pairs: A) -> Result<Json<'de>, A::Error> {
        let mut fields = Vec::new();
        while let Some(key) = pairs.next_key_seed(self)? {
            let value = pairs.next_value_seed(self)?;
            if let Json::Text(key) = key {
                fields.push((key, value));
            }
        }
        Ok(Json::Fields(fields))
    }
}
