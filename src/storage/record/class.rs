//! What is wanted of a class, as a record; what is not there is as usual.

use std::num::NonZeroU16;

use serde::{Deserialize, Serialize};

use crate::engine::class::{Ahead, ClassSettings, OvenSettings};
use crate::engine::quantity::{Mass, Minutes};
use crate::storage::enum_names::AHEAD;

use super::Record;
use super::number::{Count, Small};
use super::read::described;
use super::text::words;

words! { Ahead: AHEAD; }

described! {
    ClassSettings: ClassRecord;
    OvenSettings: OvenRecord;
}

impl Record for ClassSettings {
    const KIND: &'static str = "class";
}

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "ClassSettings",
    default = "ClassSettings::default",
    deny_unknown_fields
)]
struct ClassRecord {
    #[serde(with = "Count::<{ u16::MAX }>")]
    students: NonZeroU16,
    #[serde(with = "Count::<{ u16::MAX }>")]
    at_bench: NonZeroU16,
    #[serde(with = "Count::<{ u16::MAX }>")]
    loaves: NonZeroU16,
    #[serde(rename = "loaf_g")]
    loaf: Mass,
    /// Earlier releases wrote the mass whether or not it was set: theirs stands.
    #[serde(
        rename = "loaf_of_batch",
        default,
        skip_serializing_if = "std::ops::Not::not"
    )]
    of_batch: bool,
    #[serde(with = "Small")]
    shown: u16,
    oven: OvenSettings,
    #[serde(skip_serializing_if = "is_usual")]
    ahead: Ahead,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "OvenSettings", deny_unknown_fields)]
struct OvenRecord {
    #[serde(default = "places", with = "Count::<{ u16::MAX }>")]
    places: NonZeroU16,
    #[serde(rename = "bake_min", default = "bake")]
    bake: Minutes,
    #[serde(rename = "between_min", default = "between")]
    between: Minutes,
}

fn is_usual(ahead: &Ahead) -> bool {
    *ahead == Ahead::default()
}

fn places() -> NonZeroU16 {
    ClassSettings::default().oven.places
}

fn bake() -> Minutes {
    ClassSettings::default().oven.bake
}

fn between() -> Minutes {
    ClassSettings::default().oven.between
}
