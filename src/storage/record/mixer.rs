//! Mixers in the record of a kitchen.

use serde::{Deserialize, Serialize};

use crate::engine::heat::{Dough, PrintedFactor};
use crate::engine::quantity::{Minutes, WarmingRate};
use crate::sheet::Mixer;
use crate::storage::enum_names::PRINTED_FACTORS;

use super::error::RecordError;
use super::read::converted;
use super::text::words;

words! {
    PrintedFactor: PRINTED_FACTORS;
}

converted! {
    Mixer: MixerRecord;
}

/// The default friction of earlier releases. It warmed a
/// dough several times as much as is printed anywhere.
const FORMER: WarmingRate = WarmingRate::known(1.0);

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct MixerRecord {
    #[serde(rename = "friction_k_per_min")]
    friction: WarmingRate,
    /// Written where it is not the usual one, and beside [`FORMER`], which is then the user's own.
    #[serde(
        rename = "friction_spread_k_per_min",
        skip_serializing_if = "Option::is_none"
    )]
    friction_spread: Option<WarmingRate>,
    #[serde(rename = "mixing_min")]
    minutes: Minutes,
    #[serde(rename = "printed_factor", skip_serializing_if = "Option::is_none")]
    printed: Option<PrintedFactor>,
}

impl From<&Mixer> for MixerRecord {
    fn from(mixer: &Mixer) -> Self {
        let says_spread =
            mixer.friction_spread != Dough::FRICTION_SPREAD || mixer.friction == FORMER;
        let says_printed = mixer.printed != PrintedFactor::default();
        Self {
            friction: mixer.friction,
            friction_spread: says_spread.then_some(mixer.friction_spread),
            minutes: mixer.minutes,
            printed: says_printed.then_some(mixer.printed),
        }
    }
}

impl TryFrom<MixerRecord> for Mixer {
    type Error = RecordError;

    /// The former default becomes the present one; every other friction stays.
    fn try_from(record: MixerRecord) -> Result<Self, RecordError> {
        let is_former = record.friction == FORMER && record.friction_spread.is_none();
        Ok(Self {
            friction: if is_former {
                Dough::FRICTION
            } else {
                record.friction
            },
            friction_spread: record.friction_spread.unwrap_or(Dough::FRICTION_SPREAD),
            minutes: record.minutes,
            printed: record.printed.unwrap_or_default(),
        })
    }
}
