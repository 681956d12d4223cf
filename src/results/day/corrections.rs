//! Corrections: how the bake under way deviates from the plan it began with.

use super::day_results::DayResults;
use super::input::DayInput;
use super::planned_dough::planned_dough;
use super::rise_correction::{RiseDeviation, rise_deviation};
use super::which_rise::WhichRise;
use crate::engine::plan::{Conflict, Step, StepAt, StepKind};
use crate::engine::quantity::{Instant, Minutes, Temperature};
use crate::sheet::Moment;
use crate::sheet::day::{Bench, PlanSnapshot};

/// Everything that deviates at a step of the bake under way.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StepCorrections {
    /// The step starts late or early.
    pub start: Option<StartDeviation>,
    /// Steps that are not over and last longer or shorter.
    pub durations: Vec<DurationChange>,
    /// What becomes of the time the bread is ready.
    pub ready: Option<ReadyTime>,
    /// The dough's predicted and measured temperature, at a step of the bulk rise.
    pub dough: Option<(Temperature, Temperature)>,
    /// The rise that belongs to the step.
    pub rise: Option<RiseDeviation>,
}

/// A step that starts late or early.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StartDeviation {
    /// When it was to start.
    pub planned: Instant,
    /// By how much it is off.
    pub by: Minutes,
    /// Late, and not early.
    pub late: bool,
}

/// A step whose duration has changed since the bake began.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DurationChange {
    /// Which step.
    pub step: StepAt,
    /// How long it was to last.
    pub planned: Minutes,
    /// How long it lasts.
    pub now: Minutes,
    /// Whether it waits that much so that the bread is ready in time, and not because it takes as
    /// long.
    pub fills_time: bool,
}

/// What becomes of the time the bread is ready.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReadyTime {
    /// It has moved.
    Moved {
        /// When it was to be ready.
        planned: Instant,
        /// When it is ready.
        now: Instant,
    },
    /// It is the same, although durations have changed.
    OnTime(Instant),
}

/// A duration that differs by less is as planned, min.
const SAME_DURATION: f64 = 2.0;
/// A time that differs by less is as planned, min.
const SAME_TIME: f64 = 3.0;

/// Bread that is ready sooner by less is no news, min. Common practice.
const SOONER: f64 = 15.0;

/// Returns the planned start of every step, for a bake that begins: what its deviations are
/// measured from.
#[must_use]
pub fn plan_snapshot(results: &DayResults) -> Vec<PlanSnapshot> {
    let steps = results.steps().map(|(step, timed)| PlanSnapshot {
        step: step.at,
        begins: Moment::from_instant(timed.begins),
        lasts: timed.lasts,
    });
    steps.collect()
}

/// Returns how the bake under way deviates at a step: times in minutes, temperatures in kelvins;
/// empty without a bake.
#[must_use]
pub fn step_corrections(input: &DayInput, results: &DayResults, step: StepAt) -> StepCorrections {
    let Some(bench) = input.bench else {
        return StepCorrections::default();
    };
    let which = WhichRise::of_step(step.work);
    let rise = which.and_then(|which| rise_deviation(input, results, which));
    let mut durations = duration_changes(results, bench);
    let ready = ready(results, bench, !durations.is_empty());
    // How long the rise takes is told with what deviates about it.
    durations.retain(|change| rise.is_none_or(|rise| rise.which.step() != change.step));
    let measured = bench
        .bake
        .noted
        .dough
        .filter(|_| which == Some(WhichRise::Bulk));
    StepCorrections {
        start: start(results, bench, step),
        ready,
        durations,
        dough: measured.map(|measured| (planned_dough(input, results), measured)),
        rise,
    }
}

fn start(results: &DayResults, bench: &Bench, step: StepAt) -> Option<StartDeviation> {
    let planned = bench.planned(step)?.begins.instant();
    let began = bench.bake.began(step).map(Moment::instant);
    let now = began.or_else(|| Some(results.find(step)?.1.begins))?;
    deviation(planned, now)
}

/// By how much a step is off; `None` below [`SAME_TIME`].
pub(super) fn deviation(planned: Instant, now: Instant) -> Option<StartDeviation> {
    let late = now > planned;
    let by = if late {
        now.since(planned)
    } else {
        planned.since(now)
    };
    (by.minutes() >= SAME_TIME).then_some(StartDeviation { planned, by, late })
}

/// Returns the steps that are not over and now last longer or shorter than planned, in minutes. Bread
/// that is cool and waits to be cut is no step that lasts longer.
#[must_use]
pub fn duration_changes(results: &DayResults, bench: &Bench) -> Vec<DurationChange> {
    let found = results.steps().filter_map(|(step, timed)| {
        let planned = as_it_cools(step, bench.planned(step.at)?.lasts);
        let now = as_it_cools(step, timed.lasts);
        let off = (planned.minutes() - now.minutes()).abs();
        let changed = !bench.bake.is_over(step.at) && off >= SAME_DURATION;
        changed.then_some(DurationChange {
            step: step.at,
            planned,
            now,
            fills_time: step.lasts.is_flexible(),
        })
    });
    found.collect()
}

/// How long a step lasts without the wait of bread that is cool.
fn as_it_cools(step: &Step, lasts: Minutes) -> Minutes {
    let cool = step.lasts.wished();
    if step.at.work == StepKind::Cool && lasts > cool {
        cool
    } else {
        lasts
    }
}

/// When the bread was to be ready to cut as the bake began.
fn planned_ready(results: &DayResults, bench: &Bench) -> Option<Instant> {
    let ends = bench.planned.iter().map(|one| {
        let step = results.find(one.step).map(|(step, _)| step);
        let lasts = step.map_or(one.lasts, |step| as_it_cools(step, one.lasts));
        one.begins.instant().later(lasts)
    });
    ends.max()
}

fn ready(results: &DayResults, bench: &Bench, any_changed: bool) -> Option<ReadyTime> {
    let planned = planned_ready(results, bench)?;
    let now = results.ready_to_cut();
    if let Some(off) = deviation(planned, now) {
        let is_told = off.late || off.by.minutes() >= SOONER;
        return is_told.then_some(ReadyTime::Moved { planned, now });
    }
    let is_on_time = any_changed && results.solved.conflicts.is_empty();
    is_on_time.then_some(ReadyTime::OnTime(planned))
}

/// By how much a step that is under way at the bench, or done, is too late for the time the bread is
/// to be ready; `None` for every other conflict.
#[must_use]
pub fn late_under_way(results: &DayResults, bench: &Bench, conflict: &Conflict) -> Option<Minutes> {
    let Conflict::TooLate { step, by } = conflict else {
        return None;
    };
    let at = results.step(*step)?.0.at;
    let is_begun = bench.bake.began(at).is_some() || bench.at == Some(at);
    is_begun.then_some(*by)
}

/// Whether a time lies in a night of the plan.
#[must_use]
pub fn is_asleep(results: &DayResults, at: Instant) -> bool {
    let mut nights = results.nights.iter();
    nights.any(|night| night.from <= at && at < night.until)
}
