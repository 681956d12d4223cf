//! A bake in a record: of the log, or under way on the bench.

use serde::{Deserialize, Serialize};

use crate::engine::learn::Observation;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::Temperature;
use crate::sheet::Kitchen;
use crate::sheet::day::{Bake, DoneStep};
use crate::sheet::{Id, Moment, Sheet};

use super::number::Small;
use super::read::{converted, described};
use super::text::{List, Name, Note};

described! { Bake: BakeRecord; }

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
    #[serde(default, with = "List::<{ Bake::MOST_STEPS }>")]
    steps: Vec<DoneStep>,
    #[serde(default, with = "Note::<{ Bake::NOTE_LENGTH }>")]
    note: String,
    #[serde(default)]
    photo: bool,
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
}

impl From<&DoneStep> for DoneStepRecord {
    fn from(done: &DoneStep) -> Self {
        Self {
            work: done.step.work,
            of: done.step.of,
            began_ms: done.began,
            ended_ms: done.ended,
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
        }
    }
}
