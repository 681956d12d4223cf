//! The critical path: the steps from the first start to the table, and the waits between them.

use super::day_results::DayResults;
use crate::engine::quantity::Minutes;

/// One stretch of the path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PathItem {
    /// The step's place in the plan's list; `None` for a wait.
    pub step: Option<usize>,
    /// How long it lasts.
    pub lasts: Minutes,
}

/// Returns the steps that decide when the bread is ready: from the step that starts first, on to
/// the earliest step that waits for it, and so on.
#[must_use]
pub fn critical_path(results: &DayResults) -> Vec<PathItem> {
    let places = || results.order.iter().copied();
    let mut path = Vec::new();
    let mut at = places().next();
    while let Some((place, (_, timed))) = at.and_then(|place| Some((place, results.step(place)?))) {
        path.push(PathItem {
            step: Some(place),
            lasts: timed.ends.since(timed.begins),
        });
        let waits_for_it = |next: &usize| {
            let step = results.step(*next).map(|(step, _)| step);
            step.is_some_and(|step| step.after.contains(&place))
        };
        // Places come in the order of their start times.
        at = places().find(waits_for_it);
        let next = at.and_then(|next| results.step(next));
        let wait = next.map_or(Minutes::ZERO, |(_, next)| next.begins.since(timed.ends));
        if wait > Minutes::ZERO {
            path.push(PathItem {
                step: None,
                lasts: wait,
            });
        }
    }
    path
}
