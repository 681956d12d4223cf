//! Bedtime: whether the bread may still be in the oven when the baker goes to sleep.

use super::input::DayInput;
use super::nights::nights_between;
use super::ready_range::ReadyRange;
use crate::engine::plan::{Plan, Solved, StepKind};
use crate::engine::quantity::{Instant, Minutes};

/// A bake that may reach into the night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bedtime {
    /// When the last bread comes out of the oven by the plan.
    pub out: Instant,
    /// When it does so at the latest.
    pub out_at_latest: Instant,
    /// When the baker goes to sleep.
    pub sleeps: Instant,
}

/// How far after the planned end nights are looked for: a day.
const LOOKED_AHEAD: Minutes = Minutes::known(1440.0);

/// The night into which the bread may bake, being as late as it may be; `None` where it is out before
/// the baker goes to sleep, no night is kept, or the plan cannot be kept at all.
pub(super) fn bedtime(
    input: &DayInput,
    ready: Option<&ReadyRange>,
    plan: &Plan,
    solved: &Solved,
) -> Option<Bedtime> {
    let steps = plan.steps().iter().zip(&solved.steps);
    let bakes =
        steps.filter(|(step, _)| matches!(step.at.work, StepKind::Bake | StepKind::LaterBake));
    let (first, out) = bakes.fold(None, |found: Option<(Instant, Instant)>, (_, timed)| {
        let (begins, ends) = found.unwrap_or((timed.begins, timed.ends));
        Some((begins.min(timed.begins), ends.max(timed.ends)))
    })?;
    let out_at_latest = out.later(ready?.later.minutes);
    let mut nights = nights_between(input, first, out.later(LOOKED_AHEAD)).into_iter();
    let night = nights.find(|night| night.from < out_at_latest && night.until > first)?;
    Some(Bedtime {
        out,
        out_at_latest,
        sleeps: night.from,
    })
}
