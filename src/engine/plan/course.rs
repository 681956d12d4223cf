//! Course: a plan in whole seconds, and when each step falls, as late as it can.

use super::conditions::{Around, Done};
use super::order::Plan;
use super::step::StepKind;
use crate::engine::quantity::seconds_of;

/// One step in whole seconds.
#[derive(Clone, Debug)]
pub(super) struct Task {
    pub(super) least: i64,
    pub(super) wished: i64,
    pub(super) most: i64,
    pub(super) hands: i64,
    pub(super) inputs: Vec<usize>,
    /// When it really began, and ended.
    pub(super) began: Option<i64>,
    pub(super) ended: Option<i64>,
}

/// Longer than any oven waits hot, s: a month.
const WAITS_HOT: i64 = 30 * 86_400;

/// When a step falls.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Slot {
    pub(super) begins: i64,
    pub(super) ends: i64,
}

/// A plan in whole seconds, with what surrounds it.
pub(super) struct Course {
    pub(super) tasks: Vec<Task>,
    pub(super) nights: Vec<(i64, i64)>,
    pub(super) now: Option<i64>,
    pub(super) one_pair_of_hands: bool,
}

impl Course {
    pub(super) fn of(plan: &Plan, around: &Around) -> Self {
        let mut tasks: Vec<Task> = Vec::with_capacity(plan.steps().len());
        for (place, step) in plan.steps().iter().enumerate() {
            let done = around.done.iter().find(|done| done.step == place);
            let began = done.map(|done| done.began.seconds());
            let mut most = seconds_of(step.lasts.most());
            let mut least = seconds_of(step.lasts.least());
            // An oven that heats up is hot in its own time, and then waits hot.
            let heats = began.is_some() && step.at.work == StepKind::Preheat;
            if heats {
                least = seconds_of(step.lasts.wished());
                most = least;
            }
            let ended = done.and_then(|done| ended(done, began));
            // What is under way and does not give is over in its own time, and not before now.
            let by_itself = began.filter(|_| least == most).map(|began| {
                let now = around.now.map_or(began, |now| now.seconds());
                began.saturating_add(most).max(now)
            });
            tasks.push(Task {
                least,
                wished: seconds_of(step.lasts.wished()),
                most: if heats { WAITS_HOT } else { most },
                hands: seconds_of(step.hands),
                inputs: step.after.clone(),
                began,
                ended: ended.or(by_itself),
            });
        }
        Self {
            tasks,
            nights: around
                .nights
                .iter()
                .map(|span| (span.from.seconds(), span.until.seconds()))
                .collect(),
            now: around.now.map(|now| now.seconds()),
            one_pair_of_hands: around.one_pair_of_hands,
        }
    }

    /// What every step is wished to last.
    pub(super) fn settings(&self) -> Vec<i64> {
        self.tasks.iter().map(|task| task.wished).collect()
    }

    /// Each step as late as it can be, lasting as `lasts` says, so that all are over at `table`.
    ///
    /// What has really begun or ended stays where it was; a step under way ends when the next
    /// begins.
    pub(super) fn fill_slots(&self, lasts: &[i64], table: i64, into: &mut Vec<Slot>) {
        into.clear();
        let over = Slot {
            begins: table,
            ends: table,
        };
        into.resize(self.tasks.len(), over);
        // Until a step's turn comes, its end is the soonest beginning of those that wait for it.
        for (place, (task, lasts)) in self.tasks.iter().zip(lasts).enumerate().rev() {
            let Some(slot) = into.get_mut(place) else {
                continue;
            };
            let ends = task.ended.unwrap_or(slot.ends);
            let begins = task.began.unwrap_or_else(|| ends.saturating_sub(*lasts));
            *slot = Slot { begins, ends };
            for input in &task.inputs {
                if let Some(before) = into.get_mut(*input) {
                    before.ends = before.ends.min(begins);
                }
            }
        }
    }

    /// How long all of it takes from what has been done, or from `now`, with these lengths: when
    /// the last step is over at the soonest.
    pub(super) fn soonest(&self, lasts: &[i64], now: i64) -> i64 {
        let mut ends: Vec<i64> = Vec::with_capacity(self.tasks.len());
        for (task, lasts) in self.tasks.iter().zip(lasts) {
            let inputs = task.inputs.iter().filter_map(|input| ends.get(*input));
            let ready = inputs.copied().fold(now, i64::max);
            let begins = task.began.unwrap_or(ready);
            let over = begins.saturating_add(*lasts);
            // What is under way is not over before now.
            let over = if task.began.is_some() {
                over.max(now)
            } else {
                over
            };
            ends.push(task.ended.unwrap_or(over));
        }
        ends.into_iter().fold(now, i64::max)
    }

    /// Whether a step may still be lengthened or shortened by choice.
    pub(super) fn is_flexible(&self, place: usize) -> bool {
        let task = self.tasks.get(place);
        task.is_some_and(|task| task.began.is_none() && task.least < task.most)
    }

    /// The step itself, and all that it waits for, however far back.
    pub(super) fn before(&self, place: usize) -> Vec<bool> {
        let mut counts = vec![false; self.tasks.len()];
        if let Some(mark) = counts.get_mut(place) {
            *mark = true;
        }
        for (at, task) in self.tasks.iter().enumerate().rev() {
            if counts.get(at) == Some(&true) {
                for input in &task.inputs {
                    if let Some(mark) = counts.get_mut(*input) {
                        *mark = true;
                    }
                }
            }
        }
        counts
    }
}

/// When it really ended; never before it began.
fn ended(done: &Done, began: Option<i64>) -> Option<i64> {
    let ended = done.ended?.seconds();
    Some(ended.max(began.unwrap_or(ended)))
}
