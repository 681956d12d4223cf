//! What a bake noted, in a record; none of it need be there.

use serde::{Deserialize, Serialize};

use crate::engine::learn::{
    MeasuredCooling, MeasuredDuration, MeasuredSteam, Observation, WeighedLoss,
};
use crate::engine::quantity::{Factor, Mass, Minutes, Share, Temperature};

use super::read::described;

described! {
    Observation: NotedRecord;
    WeighedLoss: WeighedRecord;
    MeasuredDuration: TookRecord;
    MeasuredSteam: SteamRecord;
    MeasuredCooling: CooledRecord;
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
    #[serde(skip_serializing_if = "Option::is_none")]
    steam: Option<MeasuredSteam>,
    #[serde(skip_serializing_if = "Option::is_none")]
    cooling: Option<MeasuredCooling>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "MeasuredSteam", deny_unknown_fields)]
struct SteamRecord {
    #[serde(rename = "expected_g")]
    expected: Mass,
    weighed: WeighedLoss,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "MeasuredCooling", deny_unknown_fields)]
struct CooledRecord {
    #[serde(rename = "expected_c")]
    expected: Temperature,
    #[serde(rename = "found_c")]
    found: Temperature,
    #[serde(rename = "times")]
    factor: Factor,
    #[serde(rename = "within_share")]
    within: Share,
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
