//! What a bake noted, in a record; none of it need be there.

use serde::{Deserialize, Serialize};

use crate::engine::learn::{MeasuredDuration, Observation, WeighedLoss};
use crate::engine::quantity::{Mass, Minutes, Temperature};

use super::read::described;

described! {
    Observation: NotedRecord;
    WeighedLoss: WeighedRecord;
    MeasuredDuration: TookRecord;
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Observation", deny_unknown_fields)]
struct NotedRecord {
    #[serde(rename = "unmixed_c", skip_serializing_if = "Option::is_none")]
    unmixed: Option<Temperature>,
    #[serde(rename = "warmed_min", skip_serializing_if = "Option::is_none")]
    warmed_for: Option<Minutes>,
    #[serde(rename = "dough_c", skip_serializing_if = "Option::is_none")]
    dough: Option<Temperature>,
    #[serde(rename = "mixing_min", skip_serializing_if = "Option::is_none")]
    mixing: Option<Minutes>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bowl: Option<WeighedLoss>,
    #[serde(skip_serializing_if = "Option::is_none")]
    oven_loss: Option<WeighedLoss>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bulk: Option<MeasuredDuration>,
    #[serde(skip_serializing_if = "Option::is_none")]
    proof: Option<MeasuredDuration>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bake: Option<MeasuredDuration>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "WeighedLoss", deny_unknown_fields)]
struct WeighedRecord {
    #[serde(rename = "before_g")]
    before: Mass,
    #[serde(rename = "after_g")]
    after: Mass,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "MeasuredDuration", deny_unknown_fields)]
struct TookRecord {
    #[serde(rename = "expected_min")]
    expected: Minutes,
    #[serde(rename = "took_min")]
    minutes: Minutes,
}
