//! The plan settings of a formula, as a record; an absent field has its default.

use std::fmt;
use std::num::NonZeroU16;

use serde::de::value::MapAccessDeserializer;
use serde::de::{Error, MapAccess, Unexpected, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::engine::plan::{Edit, Loads};
use crate::engine::quantity::Minutes;
use crate::engine::rise::RiseSettings;
use crate::sheet::Moment;
use crate::sheet::civil::Clock;
use crate::sheet::day::{DaySettings, Fridge, Sleep, Target};

use super::Record;
use super::error::{RecordError, RecordFault};
use super::number::Count;
use super::read::{converted, described};
use super::text::List;

described! {
    Sleep: SleepRecord;
    Fridge: FridgeRecord;
}

converted! { DaySettings: DayRecord; }

impl Record for DaySettings {
    const KIND: &'static str = "day";
}

#[derive(Deserialize, Serialize)]
#[serde(default, deny_unknown_fields)]
struct DayRecord {
    rises: RiseSettings,
    /// Written where the usual rises are said to be those of a dough: an earlier release wrote a dough
    /// beside rises that nobody had stated.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    usual_rises_of_dough: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    table_ms: Option<Moment>,
    #[serde(skip_serializing_if = "Option::is_none")]
    from_ms: Option<Moment>,
    #[serde(with = "Asleep")]
    sleep: Option<Sleep>,
    fridge: Fridge,
    one_pair_of_hands: bool,
    #[serde(with = "Count::<99>")]
    loads: NonZeroU16,
    /// Left out where it is as usual.
    #[serde(skip_serializing_if = "Option::is_none")]
    between_loads_min: Option<Minutes>,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    staggered: bool,
    #[serde(with = "List::<{ Edit::MOST }>")]
    edits: Vec<Edit>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Sleep", deny_unknown_fields)]
struct SleepRecord {
    #[serde(rename = "from_min")]
    from: Clock,
    #[serde(rename = "until_min")]
    until: Clock,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Fridge", deny_unknown_fields)]
struct FridgeRecord {
    #[serde(rename = "least_min")]
    least: Minutes,
    #[serde(rename = "most_min")]
    most: Minutes,
}

impl Default for DayRecord {
    fn default() -> Self {
        Self::from(&DaySettings::default())
    }
}

impl From<&DaySettings> for DayRecord {
    fn from(wishes: &DaySettings) -> Self {
        let (table_ms, from_ms) = match wishes.target {
            Target::Open => (None, None),
            Target::Table(at) => (Some(at), None),
            Target::From(at) => (None, Some(at)),
        };
        let loads = wishes.loads;
        let usual = Loads::of(loads.count);
        Self {
            rises: wishes.rises,
            usual_rises_of_dough: wishes.rises.dough.is_some() && are_usual(&wishes.rises),
            table_ms,
            from_ms,
            sleep: wishes.sleep,
            fridge: wishes.fridge,
            one_pair_of_hands: wishes.one_pair_of_hands,
            loads: loads.count,
            between_loads_min: (loads.between != usual.between).then_some(loads.between),
            staggered: loads.staggered,
            edits: wishes.edits.clone(),
        }
    }
}

impl TryFrom<DayRecord> for DaySettings {
    type Error = RecordError;

    fn try_from(record: DayRecord) -> Result<Self, RecordError> {
        let usual = Loads::of(record.loads);
        let mut rises = record.rises;
        if are_usual(&rises) && !record.usual_rises_of_dough {
            rises.dough = None;
        }
        Ok(Self {
            rises,
            target: match (record.table_ms, record.from_ms) {
                (Some(_), Some(_)) => return Err(RecordFault::Twice.at("from_ms")),
                (Some(at), None) => Target::Table(at),
                (None, Some(at)) => Target::From(at),
                (None, None) => Target::Open,
            },
            sleep: record.sleep,
            fridge: record.fridge,
            one_pair_of_hands: record.one_pair_of_hands,
            loads: Loads {
                between: record.between_loads_min.unwrap_or(usual.between),
                staggered: record.staggered,
                ..usual
            },
            edits: record.edits,
        })
    }
}

/// Whether times and temperatures are those that stand where nobody has stated any.
fn are_usual(rises: &RiseSettings) -> bool {
    !rises.states_other_rises_than(&RiseSettings::default())
}

/// No sleep (`false`) is distinct from an absent field.
struct Asleep;

impl Asleep {
    #[allow(clippy::ref_option, reason = "serde hands a reference")]
    fn serialize<S: Serializer>(sleep: &Option<Sleep>, to: S) -> Result<S::Ok, S::Error> {
        match sleep {
            Some(sleep) => sleep.serialize(to),
            None => to.serialize_bool(false),
        }
    }

    fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Sleep>, D::Error> {
        from.deserialize_any(Self)
    }
}

impl<'de> Visitor<'de> for Asleep {
    type Value = Option<Sleep>;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("fields")
    }

    fn visit_bool<E: Error>(self, sleeps: bool) -> Result<Self::Value, E> {
        if sleeps {
            Err(E::invalid_type(Unexpected::Bool(sleeps), &self))
        } else {
            Ok(None)
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, fields: A) -> Result<Self::Value, A::Error> {
        SleepRecord::deserialize(MapAccessDeserializer::new(fields)).map(Some)
    }
}
