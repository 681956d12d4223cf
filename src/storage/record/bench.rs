//! The bake under way as a record.

use serde::{Deserialize, Serialize};

use crate::engine::formula::LineAt;
use crate::engine::plan::{Edit, Plan, StepAt, StepKind};
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::Moment;
use crate::sheet::day::{Bake, Bench, Measured, PlanSnapshot, Timer, Weighing};

use super::Record;
use super::number::{Place, Small};
use super::read::{converted, described};
use super::text::List;

described! { Bench: BenchRecord; }

converted! {
    Timer: TimerRecord;
    Weighing: WeighingRecord;
    PlanSnapshot: PromisedRecord;
    Measured: MeasuredRecord;
}

impl Record for Bench {
    const KIND: &'static str = "bench";
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Bench", deny_unknown_fields)]
struct BenchRecord {
    bake: Bake,
    #[serde(skip_serializing_if = "Option::is_none")]
    at: Option<StepAt>,
    #[serde(default, with = "List::<{ Bench::MOST_TIMERS }>")]
    timers: Vec<Timer>,
    #[serde(default, with = "List::<{ Bench::MOST_WEIGHINGS }>")]
    weighed: Vec<Weighing>,
    #[serde(
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Bench::MOST_PUT_IN }>"
    )]
    put_in: Vec<StepAt>,
    #[serde(
        rename = "promised",
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Plan::MOST }>"
    )]
    planned: Vec<PlanSnapshot>,
    #[serde(
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Bench::MOST_MEASURED }>"
    )]
    measured: Vec<Measured>,
    #[serde(
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Edit::MOST }>"
    )]
    edits: Vec<Edit>,
    #[serde(rename = "bulk_place_c", skip_serializing_if = "Option::is_none")]
    bulk_place: Option<Temperature>,
    #[serde(rename = "proof_place_c", skip_serializing_if = "Option::is_none")]
    proof_place: Option<Temperature>,
    #[serde(
        default,
        skip_serializing_if = "Vec::is_empty",
        with = "List::<{ Bench::MOST_WEIGHINGS }>"
    )]
    set_aside: Vec<Weighing>,
    #[serde(skip_serializing_if = "Option::is_none")]
    early: Option<StepAt>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct TimerRecord {
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
    ends_ms: Moment,
    #[serde(default)]
    heard: bool,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct WeighingRecord {
    #[serde(rename = "stream", with = "Place::<65_536>")]
    part: usize,
    #[serde(with = "Place::<65_536>")]
    line: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    mass_g: Option<Mass>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct PromisedRecord {
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
    begins_ms: Moment,
    lasts_min: Minutes,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct MeasuredRecord {
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
    #[serde(rename = "stream", with = "Small")]
    part: u16,
    at_c: Temperature,
    when_ms: Moment,
}

impl From<&Timer> for TimerRecord {
    fn from(timer: &Timer) -> Self {
        let StepAt { work, of } = timer.step;
        Self {
            work,
            of,
            ends_ms: timer.ends,
            heard: timer.heard,
        }
    }
}

impl From<TimerRecord> for Timer {
    fn from(record: TimerRecord) -> Self {
        let TimerRecord { work, of, .. } = record;
        Self {
            step: StepAt { work, of },
            ends: record.ends_ms,
            heard: record.heard,
        }
    }
}

impl From<&Weighing> for WeighingRecord {
    fn from(weighing: &Weighing) -> Self {
        Self {
            part: weighing.at.part,
            line: weighing.at.line,
            mass_g: weighing.mass,
        }
    }
}

impl From<WeighingRecord> for Weighing {
    fn from(record: WeighingRecord) -> Self {
        let WeighingRecord { part, line, .. } = record;
        Self {
            at: LineAt { part, line },
            mass: record.mass_g,
        }
    }
}

impl From<&PlanSnapshot> for PromisedRecord {
    fn from(planned: &PlanSnapshot) -> Self {
        let StepAt { work, of } = planned.step;
        Self {
            work,
            of,
            begins_ms: planned.begins,
            lasts_min: planned.lasts,
        }
    }
}

impl From<PromisedRecord> for PlanSnapshot {
    fn from(record: PromisedRecord) -> Self {
        let PromisedRecord { work, of, .. } = record;
        Self {
            step: StepAt { work, of },
            begins: record.begins_ms,
            lasts: record.lasts_min,
        }
    }
}

impl From<&Measured> for MeasuredRecord {
    fn from(found: &Measured) -> Self {
        let StepAt { work, of } = found.step;
        Self {
            work,
            of,
            part: found.part,
            at_c: found.at,
            when_ms: found.when,
        }
    }
}

impl From<MeasuredRecord> for Measured {
    fn from(record: MeasuredRecord) -> Self {
        let MeasuredRecord { work, of, .. } = record;
        Self {
            step: StepAt { work, of },
            part: record.part,
            at: record.at_c,
            when: record.when_ms,
        }
    }
}
