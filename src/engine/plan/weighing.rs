//! What is weighed at a step: which lines of the formula go in then.

use super::order::Plan;
use super::step::{StepAt, Work};
use crate::engine::formula::{Formula, LineAt, StreamKind};
use crate::engine::larder::Role;
use crate::engine::quantity::Mass;

/// The lines of the formula that go in at a step, in the order of the formula.
///
/// Fat is weighed when it is worked in, where the plan has a step for that.
#[must_use]
pub fn weighed_at(step: StepAt, plan: &Plan, formula: &Formula) -> Vec<LineAt> {
    let has_butter = plan.steps().iter().any(|one| one.at.work == Work::ButterIn);
    if matches!(step.work, Work::Scald | Work::MixPreferment) {
        return of_stream(formula, usize::from(step.of));
    }
    let Some(kind) = weighs(step.work) else {
        return Vec::new();
    };
    let numbered = formula.streams.iter().enumerate();
    let streams = numbered.filter(|(_, stream)| stream.kind == kind);
    let all = streams.flat_map(|(stream, _)| of_stream(formula, stream));
    all.filter(|at| {
        let is_fat = formula
            .line(*at)
            .is_some_and(|line| line.food.role() == Role::Fat);
        match (kind == StreamKind::Final, step.work == Work::ButterIn) {
            (true, true) => is_fat,
            (true, false) => !(has_butter && is_fat),
            (false, _) => true,
        }
    })
    .collect()
}

/// The kind of stream that goes in at a work, where that is none of its own.
const fn weighs(work: Work) -> Option<StreamKind> {
    match work {
        Work::Mix | Work::ButterIn => Some(StreamKind::Final),
        Work::Shape => Some(StreamKind::Filling),
        Work::Melt => Some(StreamKind::Topping),
        Work::Brush => Some(StreamKind::Wash),
        Work::Scald
        | Work::CoolPaste
        | Work::ChillPaste
        | Work::MixPreferment
        | Work::StandPreferment
        | Work::ChillPreferment
        | Work::WarmUp
        | Work::Bulk
        | Work::Divide
        | Work::Round
        | Work::Rest
        | Work::Tin
        | Work::Proof
        | Work::Drizzle
        | Work::Bake
        | Work::Cool
        | Work::Own
        | Work::LaterDough
        | Work::LaterProof
        | Work::Refill
        | Work::LaterBake => None,
    }
}

/// The lines of a stream that weigh anything.
fn of_stream(formula: &Formula, stream: usize) -> Vec<LineAt> {
    let lines = formula.streams.get(stream).map(|own| own.lines.iter());
    let numbered = lines.into_iter().flatten().enumerate();
    numbered
        .filter(|(_, line)| line.mass > Mass::ZERO)
        .map(|(line, _)| LineAt { stream, line })
        .collect()
}
