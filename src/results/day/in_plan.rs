//! The run in its plan: how long each paste and preferment really is in the fridge, and how ripe it
//! then is.

use super::input::DayInput;
use super::preferment::preferment_rise;
use crate::engine::plan::{Plan, Solved, StepAt, StepKind};
use crate::engine::quantity::Minutes;
use crate::engine::rise::RiseSettings;
use crate::results::run::{Run, StageKind};

/// How long a step lasts in a solved plan; `None` where the plan does not have it.
fn lasts(plan: &Plan, solved: &Solved, at: StepAt) -> Option<Minutes> {
    Some(solved.steps.get(plan.place(at)?)?.lasts)
}

/// How long a part is in the fridge by the plan; `None` for a part that the plan does not chill.
fn in_fridge(plan: &Plan, solved: &Solved, part: usize) -> Option<Minutes> {
    let of = u16::try_from(part).ok()?;
    let kinds = [StepKind::ChillPaste, StepKind::ChillPreferment];
    let found = kinds.map(|work| lasts(plan, solved, StepAt { work, of }));
    found.into_iter().flatten().next()
}

/// The run with the times of its plan: the stages in the fridge, and the ripeness of each preferment
/// as it then leaves it.
///
/// The wished time in the fridge gave the temperatures; after the hours that a plan has both in
/// there they are those of the fridge, so that the temperatures stay as they are.
pub(super) fn in_plan(mut run: Run, input: &DayInput, plan: &Plan, solved: &Solved) -> Run {
    let chilled = run.stages.iter_mut();
    for stage in chilled.filter(|stage| stage.kind == StageKind::Chill) {
        if let Some(lasts) = stage.part.and_then(|part| in_fridge(plan, solved, part)) {
            stage.lasts = [lasts; 3];
        }
    }
    let (kitchen, rises) = (input.taught_kitchen(), input.rise_settings());
    let at = run.references.bulk.at;
    for own in run.rises.preferments.iter_mut().flatten() {
        let planned = in_fridge(plan, solved, own.part);
        if let Some(fridge) = planned.filter(|fridge| *fridge != rises.fridge) {
            let settings = RiseSettings { fridge, ..rises };
            if let Ok(rise) = preferment_rise(&run.formula, own.part, &kitchen, &settings, at) {
                *own = rise;
            }
        }
    }
    run
}
