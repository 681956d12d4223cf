//! The order of the bench, and which of its steps it counts.

use super::day_results::DayResults;
use super::doing::{Doing, doing};
use crate::engine::plan::{Step, StepAt, Timed};

/// Whether a step has a number: the baker does it or sets it going, or nothing is before it with which
/// it could begin by itself. The bench, the plan, the card and a link all count these.
pub(super) fn is_counted(step: &Step) -> bool {
    doing(step.at.work) != Doing::ByItself || step.after.is_empty()
}

/// The steps of a plan that have a number, by their times.
pub(super) fn bench_order(results: &DayResults) -> Vec<StepAt> {
    let counted = in_order(results).map(|(step, _)| step);
    let counted = counted.filter(|step| is_counted(step));
    counted.map(|step| step.at).collect()
}

/// Returns the number that a step has at the bench, counted from one; `None` for one that runs by
/// itself.
#[must_use]
pub fn step_count(results: &DayResults, at: StepAt) -> Option<usize> {
    let place = bench_order(results).iter().position(|one| *one == at)?;
    place.checked_add(1)
}

/// Returns how many steps the bench counts: those that [`bench_list`](super::bench_list) lists.
#[must_use]
pub fn steps_counted(results: &DayResults) -> usize {
    bench_order(results).len()
}

/// The steps of a plan by their times.
pub(super) fn in_order(results: &DayResults) -> impl Iterator<Item = (&Step, &Timed)> {
    results
        .order
        .iter()
        .filter_map(|place| results.step(*place))
}
