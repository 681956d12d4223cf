//! The run: every stage with its temperatures and times.

use serde_json::{Value, json};
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

/// A run as the answer has it.
pub(crate) fn to_json(run: &Run) -> Value {
    json!({
        "dough_c": run.dough.celsius(),
        "dough_is": match run.dough_basis {
            DoughBasis::Measured => "measured",
            DoughBasis::Predicted => "predicted",
            DoughBasis::Wished => "wished",
        },
        "proofed_c": run.rises.temperatures.proofed.celsius(),
        "stages": run.stages.iter().map(stage).collect::<Vec<_>>(),
    })
}
