//! The run: every stage with its temperatures and times.

use serde_json::{Value, json};
use softcrumb::results::day::{ReadyItem, ReadyPath, ReadyRange};
use softcrumb::results::run::{DoughBasis, Run, Stage, StageKind};

const fn kind(kind: StageKind) -> &'static str {
    match kind {
        StageKind::Scald => "scald",
        StageKind::Stand => "stand",
        StageKind::Chill => "chill",
        StageKind::WarmUp => "warm_up",
        StageKind::Mix => "mix",
        StageKind::Bulk => "bulk",
        StageKind::Shape => "shape",
        StageKind::Proof => "proof",
        StageKind::Bake => "bake",
        StageKind::Cool => "cool",
    }
}

fn stage(stage: &Stage) -> Value {
    json!({
        "kind": kind(stage.kind), "part": stage.part,
        "starts_c": stage.starts.celsius(), "ends_c": stage.ends.celsius(),
        "lasts_min": stage.lasts.map(|lasts| lasts.minutes()), "measured": stage.is_measured,
    })
}

fn ready_to_json(ready: &ReadyRange) -> Value {
    json!({
        "soonest_s": ready.soonest.seconds(), "likely_s": ready.likely.seconds(),
        "latest_s": ready.latest.seconds(),
        "sooner": path(&ready.sooner), "later": path(&ready.later),
    })
}

fn path(path: &ReadyPath) -> Value {
    let items = path.items.iter().map(|item| {
        let (kind, step, by) = match item {
            ReadyItem::Step { step, by } => ("step", step, by),
            ReadyItem::Dough { step, by } => ("dough", step, by),
            ReadyItem::Wait { step, by } => ("wait", step, by),
        };
        json!({ "kind": kind, "step": step, "min": by.minutes() })
    });
    json!({ "min": path.minutes.minutes(), "items": items.collect::<Vec<_>>() })
}

/// A run as the answer has it.
pub(crate) fn to_json(run: &Run, ready: Option<&ReadyRange>) -> Value {
    json!({
        "dough_c": run.dough.celsius(),
        "dough_is": match run.dough_basis {
            DoughBasis::Measured => "measured",
            DoughBasis::Predicted => "predicted",
            DoughBasis::Wished => "wished",
        },
        "proofed_c": run.rises.temperatures.proofed.celsius(),
        "stages": run.stages.iter().map(stage).collect::<Vec<_>>(),
        "ready": ready.map(ready_to_json),
    })
}
