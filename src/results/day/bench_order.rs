//! The order of the bench: who begins and ends each kind of step, and which steps the bench counts.

use super::day_results::DayResults;
use crate::engine::plan::{Step, StepAt, StepKind, Timed};

/// Who begins and ends a kind of step at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// The baker's hands, until it is done.
    ByHand,
    /// The baker sets it going; it runs beside other work.
    SetGoing,
    /// It begins when the work before it is done, and runs beside other work.
    ByItself,
}

/// Who begins and ends a kind of step.
#[must_use]
pub const fn doing(kind: StepKind) -> Doing {
    match kind {
        StepKind::CoolPaste
        | StepKind::ChillPaste
        | StepKind::ChillPreferment
        | StepKind::WarmUp
        | StepKind::Preheat
        | StepKind::Bake
        | StepKind::Cool
        | StepKind::Refill
        | StepKind::LaterBake => Doing::SetGoing,
        StepKind::StandPreferment
        | StepKind::Bulk
        | StepKind::Rest
        | StepKind::Proof
        | StepKind::LaterProof => Doing::ByItself,
        StepKind::Scald
        | StepKind::MixPreferment
        | StepKind::Mix
        | StepKind::ButterIn
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Shape
        | StepKind::Tin
        | StepKind::Melt
        | StepKind::Drizzle
        | StepKind::Brush
        | StepKind::Own
        | StepKind::LaterDough => Doing::ByHand,
    }
}

/// The steps of a plan that the baker does or sets going, by their times.
pub(super) fn bench_order(results: &DayResults) -> Vec<StepAt> {
    let all = in_order(results).map(|(step, _)| step.at);
    all.filter(|at| doing(at.work) != Doing::ByItself).collect()
}

/// The steps of a plan by their times.
pub(super) fn in_order(results: &DayResults) -> impl Iterator<Item = (&Step, &Timed)> {
    results
        .order
        .iter()
        .filter_map(|place| results.step(*place))
}
