//! What becomes of the bread when a step that is waited for begins at once.

use super::bench_progress::begin;
use super::corrections::{DurationChange, deviation};
use super::day_results::{DayResults, of};
use super::grave::gravity;
use super::input::DayInput;
use crate::engine::plan::{Conflict, StepAt, StepKind};
use crate::engine::quantity::{Instant, Minutes};

/// The plan with a step that begins at once, beside the plan as it is.
#[derive(Clone, Debug, PartialEq)]
pub struct StartNow {
    /// When the bread is then ready to cut, most likely.
    pub ready: Instant,
    /// By how much that is later or earlier than in the plan as it is.
    pub moved: Moved,
    /// The step that then lasts much longer than in the plan as it is.
    pub longer: Option<DurationChange>,
    /// How long the oven then stands hot before the bread goes in, where that is long.
    pub hot: Option<Minutes>,
    /// What is then in conflict and is not in the plan as it is, one of each kind, the gravest first.
    pub conflicts: Vec<Conflict>,
}

/// By how much the bread is ready at another time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Moved {
    /// At the same time.
    Same,
    /// Earlier by this much.
    Earlier(Minutes),
    /// Later by this much.
    Later(Minutes),
}

/// A step that lasts longer by less is not told, min.
const MUCH_LONGER: f64 = 10.0;

/// Returns what becomes of the plan when a step begins now; `None` without a bake, or where no plan
/// can then be made.
#[must_use]
pub fn start_now(input: &DayInput, results: &DayResults, step: StepAt) -> Option<StartNow> {
    let mut bench = input.bench?.clone();
    begin(&mut bench, results, step, input.now);
    let begun = DayInput {
        bench: Some(&bench),
        ..*input
    };
    let then = of(&begun).ok()?;
    let (was, ready) = (results.ready_to_cut(), then.ready_to_cut());
    let moved = match deviation(was, ready) {
        None => Moved::Same,
        Some(found) if found.late => Moved::Later(found.by),
        Some(found) => Moved::Earlier(found.by),
    };
    Some(StartNow {
        ready,
        moved,
        longer: longer(results, &then),
        hot: hot(&then, step),
        conflicts: new_conflicts(results, &then),
    })
}

/// How long the oven stands hot before the bake begins; `None` where that is not long, or where
/// another step begins.
fn hot(then: &DayResults, step: StepAt) -> Option<Minutes> {
    let place = then.plan.place(step)?;
    let (_, heated) = then
        .step(place)
        .filter(|_| step.work == StepKind::Preheat)?;
    let waits_for_it = then.steps().filter(|(one, _)| one.after.contains(&place));
    let bakes = waits_for_it.map(|(_, timed)| timed.begins).min()?;
    let stands = bakes.since(heated.ends);
    (stands.minutes() >= MUCH_LONGER).then_some(stands)
}

/// What is in conflict in the one plan and not in the other, one of each kind, the gravest first.
fn new_conflicts(results: &DayResults, then: &DayResults) -> Vec<Conflict> {
    let had = &results.solved.conflicts;
    let conflicts = then.solved.conflicts.iter().copied();
    let mut new: Vec<Conflict> = conflicts
        .filter(|one| !had.iter().any(|other| is_about(one) == is_about(other)))
        .collect();
    new.dedup_by_key(|one| gravity(one));
    new
}

/// The gravity of a conflict, and the step it is about.
const fn is_about(conflict: &Conflict) -> (u8, usize) {
    let (Conflict::TooLate { step, .. }
    | Conflict::Waits { step, .. }
    | Conflict::AtNight { step, .. }
    | Conflict::HandsFull { step, .. }) = conflict;
    (gravity(conflict), *step)
}

/// The step that is lengthened most, of those that are lengthened much. Bread that lies ready for longer
/// is no step that lasts longer.
fn longer(results: &DayResults, then: &DayResults) -> Option<DurationChange> {
    let steps = then.steps();
    let steps = steps.filter(|(step, _)| step.at.work != StepKind::Cool);
    let changes = steps.filter_map(|(step, timed)| {
        let (_, before) = results.find(step.at)?;
        let by = timed.lasts.minutes() - before.lasts.minutes();
        let change = DurationChange {
            step: step.at,
            planned: before.lasts,
            now: timed.lasts,
            fills_time: step.lasts.is_flexible(),
        };
        (by >= MUCH_LONGER).then_some((by, change))
    });
    let most = changes.max_by(|one, other| one.0.total_cmp(&other.0));
    most.map(|(_, change)| change)
}
