//! The bench: a bake's beginning and end, and its timers.

use super::bench_progress::arrive;
use super::corrections::plan_snapshot;
use super::day_results::DayResults;
use super::input::DayInput;
use super::observations::note_durations;
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::civil::{Clock, Zone};
use crate::sheet::day::{Bake, Bench, DaySettings, Timer};
use crate::sheet::{Id, Moment};

/// A timer's state at a moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TimerState {
    /// It runs for this much longer.
    Running(Minutes),
    /// It ended less than a minute ago.
    JustEnded,
    /// It ended this long ago.
    Ended(Minutes),
}

/// A timer that ended less than this ago has just ended, min.
const JUST_ENDED: f64 = 1.0;

/// Returns whether a timer runs, and the minutes it still has or is over by, at `now`.
#[must_use]
pub fn timer_state(timer: &Timer, now: Moment) -> TimerState {
    let left = timer.left(now);
    let ago = now.instant().since(timer.ends.instant());
    if left > Minutes::ZERO {
        TimerState::Running(left)
    } else if ago.minutes() < JUST_ENDED {
        TimerState::JustEnded
    } else {
        TimerState::Ended(ago)
    }
}

/// A bake that begins now, with the plan's times as they are now.
#[must_use]
pub fn begin_bake(
    id: Id,
    formula: Option<Id>,
    now: Moment,
    input: &DayInput,
    results: Option<&DayResults>,
) -> Bench {
    let mut bake = Bake::new(id, now);
    bake.formula = formula;
    bake.name.clone_from(&input.sheet.name);
    bake.room = Some(input.kitchen.room);
    bake.kitchen.clone_from(&input.kitchen.name);
    let mut bench = Bench::new(bake);
    bench.planned = results.map(plan_snapshot).unwrap_or_default();
    if let Some(results) = results {
        arrive(&mut bench, results, now);
    }
    bench
}

/// Whether a bench was only looked at: nothing is done, begun on purpose, weighed or noted.
#[must_use]
pub fn is_untouched(bench: &Bench) -> bool {
    let bake = &bench.bake;
    let opened = Bench {
        at: bench.at,
        planned: bench.planned.clone(),
        ..Bench::new(Bake {
            formula: bake.formula.clone(),
            name: bake.name.clone(),
            kitchen: bake.kitchen.clone(),
            room: bake.room,
            steps: bake.steps.clone(),
            ..Bake::new(bake.id.clone(), bake.began)
        })
    };
    let only_shown = match bake.steps.as_slice() {
        [] => true,
        [shown] => shown.ended.is_none(),
        _ => false,
    };
    only_shown && *bench == opened
}

/// Returns the bake for the log. Its durations in minutes are noted where `results` is the plan of
/// its formula.
#[must_use]
pub fn finish_bake(bench: Bench, results: Option<&DayResults>, settings: &DaySettings) -> Bake {
    let mut bake = bench.bake;
    let steps = bake.steps.iter().map(|done| done.began);
    // One that was begun late here, and put right, began with its first step.
    bake.began = steps.fold(
        bake.began,
        |first, began| {
            if began < first { began } else { first }
        },
    );
    if let Some(results) = results {
        note_durations(&mut bake, results, settings);
    }
    bake
}

/// The last time before now, today or yesterday, at which the local clock showed this; else now.
///
/// ```
/// use softcrumb::engine::quantity::Instant;
/// use softcrumb::results::day::last_time;
/// use softcrumb::sheet::civil::{Clock, Zone};
///
/// let noon = Instant::from_seconds(12 * 3600)?;
/// let at = |hour| last_time(Clock::from_hour(hour, 0).unwrap_or_default(), noon, &Zone::default());
/// assert_eq!(at(11).seconds(), 11 * 3600);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn last_time(clock: Clock, now: Instant, zone: &Zone) -> Instant {
    let today = zone.civil(now).date;
    let days = [0, -1].map(|days| zone.instant(today.plus(days), clock).first());
    days.into_iter().find(|at| *at <= now).unwrap_or(now)
}
