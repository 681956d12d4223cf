//! A bake in a record: of the log, or under way on the bench.

use serde::{Deserialize, Serialize};

use crate::engine::learn::Observation;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Mass, Minutes, Share, Temperature};
use crate::sheet::Kitchen;
use crate::sheet::day::{Bake, Crust, DoneStep, Findings, WeighedOtherwise};
use crate::sheet::{Id, Moment, Sheet};

use super::number::Small;
use super::read::{converted, described};
use super::text::{List, Name, Note, words};

words! {
    Crust: &[
        (Crust::Pale, "pale"),
        (Crust::Golden, "golden"),
        (Crust::Dark, "dark"),
    ];
}

described! {
    Bake: BakeRecord;
    Findings: FoundRecord;
    WeighedOtherwise: WeighedOtherwiseRecord;
}

converted! { DoneStep: DoneStepRecord; }

#[derive(Deserialize, Serialize)]
#[serde(remote = "Bake", deny_unknown_fields)]
struct BakeRecord {
    id: Id,
    #[serde(skip_serializing_if = "Option::is_none")]
    formula: Option<Id>,
    #[serde(default, with = "Name::<{ Sheet::NAME_LENGTH }>")]
    name: String,
    #[serde(default, with = "Name::<{ Kitchen::NAME_LENGTH }>")]
    kitchen: String,
    #[serde(rename = "began_ms")]
    began: Moment,
    #[serde(rename = "room_c", skip_serializing_if = "Option::is_none")]
    room: Option<Temperature>,
    #[serde(default)]
    noted: Observation,
    #[serde(default, skip_serializing_if = "Findings::is_none")]
    found: Findings,
    #[serde(default, with = "List::<{ Bake::MOST_STEPS }>")]
    steps: Vec<DoneStep>,
    #[serde(
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Bake::MOST_WEIGHED }>"
    )]
    weighed: Vec<WeighedOtherwise>,
    #[serde(default, with = "Note::<{ Bake::NOTE_LENGTH }>")]
    note: String,
    #[serde(default)]
    photo: bool,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Findings", deny_unknown_fields)]
struct FoundRecord {
    #[serde(rename = "water_share", skip_serializing_if = "Option::is_none")]
    water: Option<Share>,
    #[serde(rename = "paste_c", skip_serializing_if = "Option::is_none")]
    paste: Option<Temperature>,
    #[serde(rename = "bread_g", skip_serializing_if = "Option::is_none")]
    bread: Option<Mass>,
    #[serde(rename = "core_c", skip_serializing_if = "Option::is_none")]
    core: Option<Temperature>,
    #[serde(skip_serializing_if = "Option::is_none")]
    crust: Option<Crust>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct DoneStepRecord {
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
    began_ms: Moment,
    #[serde(skip_serializing_if = "Option::is_none")]
    ended_ms: Option<Moment>,
    #[serde(skip_serializing_if = "Option::is_none")]
    expected_min: Option<Minutes>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "WeighedOtherwise", deny_unknown_fields)]
struct WeighedOtherwiseRecord {
    #[serde(with = "Name::<{ WeighedOtherwise::NAME_LENGTH }>")]
    food: String,
    #[serde(rename = "asked_g")]
    asked: Mass,
    #[serde(rename = "weighed_g")]
    weighed: Mass,
}

impl From<&DoneStep> for DoneStepRecord {
    fn from(done: &DoneStep) -> Self {
        Self {
            work: done.step.work,
            of: done.step.of,
            began_ms: done.began,
            ended_ms: done.ended,
            expected_min: done.expected,
        }
    }
}

impl From<DoneStepRecord> for DoneStep {
    fn from(record: DoneStepRecord) -> Self {
        Self {
            step: StepAt {
                work: record.work,
                of: record.of,
            },
            began: record.began_ms,
            ended: record.ended_ms,
            expected: record.expected_min,
        }
    }
}
