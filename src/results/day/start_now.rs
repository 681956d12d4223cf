//! What becomes of the bread when a step that is waited for begins at once.

use super::bench_progress::begin;
use super::corrections::{DurationChange, deviation};
use super::day_results::{DayResults, of};
use super::input::DayInput;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Instant, Minutes};

/// The plan with a step that begins at once, beside the plan as it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StartNow {
    /// When the bread is then ready to cut, most likely.
    pub ready: Instant,
    /// By how much that is later or earlier than in the plan as it is.
    pub moved: Moved,
    /// The step that then lasts much longer than in the plan as it is.
    pub longer: Option<DurationChange>,
    /// Whether more is then in conflict than in the plan as it is.
    pub conflicts: bool,
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
        conflicts: then.solved.conflicts.len() > results.solved.conflicts.len(),
    })
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
