//! What is weighed at a step: which lines of the formula go in then.

use super::order::Plan;
use super::step::{StepAt, StepKind};
use crate::engine::formula::{Formula, LineAt, PartKind};
use crate::engine::ingredients::Role;
use crate::engine::quantity::Mass;

/// The lines of the formula that go in at a step, in the order of the formula.
///
/// Fat is weighed when it is worked in, where the plan has a step for that.
#[must_use]
pub fn weighed_at(step: StepAt, plan: &Plan, formula: &Formula) -> Vec<LineAt> {
    let has_butter = plan
        .steps()
        .iter()
        .any(|one| one.at.work == StepKind::ButterIn);
    if matches!(step.work, StepKind::Scald | StepKind::MixPreferment) {
        return of_part(formula, usize::from(step.of));
    }
    let Some(kind) = weighs(step.work) else {
        return Vec::new();
    };
    let numbered = formula.parts.iter().enumerate();
    let parts = numbered.filter(|(_, part)| part.kind == kind);
    let all = parts.flat_map(|(part, _)| of_part(formula, part));
    all.filter(|at| {
        let is_fat = formula
            .line(*at)
            .is_some_and(|line| line.food.role() == Role::Fat);
        match (kind == PartKind::Final, step.work == StepKind::ButterIn) {
            (true, true) => is_fat,
            (true, false) => !(has_butter && is_fat),
            (false, _) => true,
        }
    })
    .collect()
}

/// The kind of part that goes in at a work, where that is none of its own.
const fn weighs(work: StepKind) -> Option<PartKind> {
    match work {
        StepKind::Mix | StepKind::ButterIn => Some(PartKind::Final),
        StepKind::Shape => Some(PartKind::Filling),
        StepKind::Melt => Some(PartKind::Topping),
        StepKind::Brush => Some(PartKind::Wash),
        StepKind::Scald
        | StepKind::CoolPaste
        | StepKind::ChillPaste
        | StepKind::MixPreferment
        | StepKind::StandPreferment
        | StepKind::ChillPreferment
        | StepKind::WarmUp
        | StepKind::Bulk
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Rest
        | StepKind::Tin
        | StepKind::Proof
        | StepKind::Drizzle
        | StepKind::Preheat
        | StepKind::Bake
        | StepKind::Cool
        | StepKind::Own
        | StepKind::LaterDough
        | StepKind::LaterProof
        | StepKind::Refill
        | StepKind::LaterBake => None,
    }
}

/// The lines of a part that weigh anything.
fn of_part(formula: &Formula, part: usize) -> Vec<LineAt> {
    let lines = formula.parts.get(part).map(|own| own.lines.iter());
    let numbered = lines.into_iter().flatten().enumerate();
    numbered
        .filter(|(_, line)| line.mass > Mass::ZERO)
        .map(|(line, _)| LineAt { part, line })
        .collect()
}
