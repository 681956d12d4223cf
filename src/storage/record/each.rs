//! Parts of a file that are read each by itself: one that cannot be does not stand in the way.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use serde_json::value::RawValue;

use super::error::RecordError;
use super::read;

/// A part, or what is wrong with it; written only where it could be read.
#[derive(Debug)]
pub(super) struct Each<T>(pub(super) Result<T, RecordError>);

impl<T: Serialize> Serialize for Each<T> {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        self.0.as_ref().ok().serialize(to)
    }
}

impl<'de, T: for<'t> Deserialize<'t>> Deserialize<'de> for Each<T> {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let json = Box::<RawValue>::deserialize(from)?;
        Ok(Self(read::part(json.get())))
    }
}

/// The items of a list that could be read; the others are put among what was refused, with the way
/// to them.
pub(super) fn good<T>(items: Vec<Each<T>>, key: &str, refused: &mut Vec<RecordError>) -> Vec<T> {
    let mut good = Vec::with_capacity(items.len());
    for (at, Each(item)) in items.into_iter().enumerate() {
        match item {
            Ok(item) => good.push(item),
            Err(error) => refused.push(error.item(at).inside(key)),
        }
    }
    good
}

/// A part under a key, where it is there and could be read.
pub(super) fn one<T>(
    component: Option<Each<T>>,
    key: &str,
    refused: &mut Vec<RecordError>,
) -> Option<T> {
    component?
        .0
        .map_err(|error| refused.push(error.inside(key)))
        .ok()
}
