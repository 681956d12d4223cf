//! What a formula says of its rises, in a record; what is not there is as usual.

use serde::{Deserialize, Serialize};

use crate::engine::quantity::{Factor, Minutes, Share, Temperature};
use crate::engine::rise::{RiseSettings, Stated, YeastActivity};

use super::error::{RecordError, RecordFault};
use super::read::{converted, described};

described! {
    RiseSettings: RisesRecord;
    Stated: StatedRecord;
}

converted! { YeastActivity: DoughRecord; }

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "RiseSettings",
    default = "RiseSettings::default",
    deny_unknown_fields
)]
struct RisesRecord {
    bulk: Stated,
    #[serde(rename = "rest_min")]
    rest: Minutes,
    proof: Stated,
    #[serde(rename = "bulk_place_c", skip_serializing_if = "Option::is_none")]
    bulk_place: Option<Temperature>,
    #[serde(rename = "proof_place_c", skip_serializing_if = "Option::is_none")]
    proof_place: Option<Temperature>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dough: Option<YeastActivity>,
    #[serde(rename = "bench_min")]
    bench: Minutes,
    #[serde(rename = "fridge_min")]
    fridge: Minutes,
    #[serde(rename = "volume_times")]
    volume: Factor,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Stated", deny_unknown_fields)]
struct StatedRecord {
    #[serde(rename = "minutes")]
    time: Minutes,
    #[serde(rename = "at_c")]
    at: Temperature,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct DoughRecord {
    yeast_share: Share,
    sugar_share: Share,
    salt_share: Share,
}

impl From<&YeastActivity> for DoughRecord {
    fn from(dough: &YeastActivity) -> Self {
        Self {
            yeast_share: dough.yeast,
            sugar_share: dough.sugar,
            salt_share: dough.salt,
        }
    }
}

impl TryFrom<DoughRecord> for YeastActivity {
    type Error = RecordError;

    /// A dough without yeast has no known rise.
    fn try_from(record: DoughRecord) -> Result<Self, RecordError> {
        let known = Self::of(record.yeast_share, record.sugar_share, record.salt_share);
        known.map_err(|_| RecordFault::NoYeast.at("yeast_share"))
    }
}
