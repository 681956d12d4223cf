//! What *Done*, *Start it now* and *Back* do at the bench, and another place for a rise.

use super::bench_course::{Course, bench_screen};
use super::bench_order::is_counted;
use super::day_results::{DayResults, of};
use super::doing::{Doing, doing};
use super::input::DayInput;
use super::which_rise::WhichRise;
use crate::engine::plan::{Edit, Step, StepAt, StepKind};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::Moment;
use crate::sheet::day::Bench;

/// Notes that a step is done, or has been set going: what it waited for is over, what follows by
/// itself begins with its timer, and the next step begins if it is due.
pub fn step_done(bench: &mut Bench, results: &DayResults, step: StepAt, now: Moment) {
    let begins = match doing(step.work) {
        Doing::ByHand => began_at_latest(bench, results, step, now),
        Doing::SetGoing | Doing::ByItself => now,
    };
    begin(bench, results, step, begins);
    if doing(step.work) == Doing::ByHand {
        bench.end(step, now);
    } else {
        run_timer(bench, results, step);
    }
    let by_itself = |one: &&Step| !is_counted(one);
    for follows in results.plan.steps().iter().filter(by_itself) {
        let course = Course { results, bench };
        let all_over = course
            .inputs(follows.at)
            .all(|input| bench.bake.is_over(input.at));
        if all_over && bench.bake.began(follows.at).is_none() {
            bench.bake.begin(follows.at, now);
            run_timer(bench, results, follows.at);
        }
    }
    bench.at = None;
    bench.early = None;
    arrive(bench, results, now);
}

/// Begins a step before it is due. *Back* undoes that until the step is done.
pub fn begin_early(bench: &mut Bench, results: &DayResults, step: StepAt, now: Moment) {
    take_up(bench, results, step, now);
    bench.early = Some(step);
}

/// Begins a step and shows it.
fn take_up(bench: &mut Bench, results: &DayResults, step: StepAt, now: Moment) {
    if doing(step.work) == Doing::ByHand {
        begin(bench, results, step, now);
    }
    bench.at = Some(step);
}

/// Begins the step that is due, if one is.
pub(super) fn arrive(bench: &mut Bench, results: &DayResults, now: Moment) {
    let screen = bench_screen(Some(results), Some(bench), now);
    if let (Some(step), None) = (screen.step, screen.idle_until) {
        take_up(bench, results, step, now);
    }
}

/// The step that is due and is to stay on the screen until it is done; `None` where none is due, or
/// where the one that is due stays already.
///
/// A step that was not kept would give way to another as the clock moves on and the plan with it.
#[must_use]
pub fn to_keep(bench: &Bench, results: &DayResults, now: Moment) -> Option<StepAt> {
    let screen = bench_screen(Some(results), Some(bench), now);
    let due = screen.step.filter(|_| screen.idle_until.is_none());
    due.filter(|step| bench.at != Some(*step))
}

/// Takes back what was done last: it is to be done again, what began with it or after it has not
/// begun, what ended then runs on with its timer. A step that was begun before it was due, and is not
/// done, is waited for again.
pub fn take_back(bench: &mut Bench, results: &DayResults, now: Moment) {
    if let Some(early) = (Course { results, bench }).begun_early() {
        bench.early = None;
        if let Some(began) = bench.bake.began(early) {
            undo_since(bench, results, (began, None), now);
        }
        bench.at = None;
        return;
    }
    let course = Course { results, bench };
    let Some(last) = course.last_done() else {
        return;
    };
    let Some(at) = course.done_at(last) else {
        return;
    };
    let stays = Some(last).filter(|last| doing(last.work) == Doing::ByHand);
    undo_since(bench, results, (at, stays), now);
    bench.at = Some(last);
}

/// Takes back what began or ended at a moment or after it; one step may keep its beginning.
fn undo_since(
    bench: &mut Bench,
    results: &DayResults,
    (at, stays): (Moment, Option<StepAt>),
    now: Moment,
) {
    bench
        .bake
        .steps
        .retain(|done| done.began < at || stays == Some(done.step));
    for done in &mut bench.bake.steps {
        done.ended = done.ended.filter(|ended| *ended < at);
    }
    let runs: Vec<StepAt> = bench.bake.steps.iter().map(|done| done.step).collect();
    bench.timers.retain(|timer| runs.contains(&timer.step));
    for step in runs {
        let has = bench.timers.iter().any(|timer| timer.step == step);
        let course = Course { results, bench };
        let ends = timer_as_begun(bench, step).map(Moment::instant);
        let ends = ends.or_else(|| course.ends(step));
        let ahead = ends.is_some_and(|ends| ends > now.instant());
        if !has && ahead && doing(step.work) != Doing::ByHand && !bench.bake.is_over(step) {
            match timer_as_begun(bench, step) {
                Some(ends) => bench.set_timer(step, ends),
                None => run_timer(bench, results, step),
            }
        }
    }
}

/// When the timer of a step ends that was set as it began, or that was changed since; `None` where none
/// was.
fn timer_as_begun(bench: &Bench, step: StepAt) -> Option<Moment> {
    let done = bench.bake.steps.iter().find(|done| done.step == step)?;
    let changed = bench.edits.iter().find_map(|edit| match edit {
        Edit::Duration { step: of, minutes } if *of == step => Some(*minutes),
        Edit::Duration { .. } | Edit::LeftOut { .. } | Edit::Sooner { .. } | Edit::Added { .. } => {
            None
        }
    });
    let lasts = changed.or(done.expected)?;
    Some(Moment::from_instant(done.began.instant().later(lasts)))
}

/// Begins a step and ends what it waited for.
pub(super) fn begin(bench: &mut Bench, results: &DayResults, step: StepAt, at: Moment) {
    let inputs: Vec<StepAt> = Course { results, bench }
        .inputs(step)
        .map(|input| input.at)
        .collect();
    for input in inputs {
        bench.end(input, at);
    }
    bench.bake.begin(step, at);
}

/// A step whose beginning was not noted began at the latest so long ago as it keeps hands busy, and
/// not before what it waited for.
fn began_at_latest(bench: &Bench, results: &DayResults, step: StepAt, now: Moment) -> Moment {
    let hands = results
        .find(step)
        .map_or(Minutes::ZERO, |(one, _)| one.hands);
    let earliest = Moment::from_instant(now.instant().earlier(hands));
    let course = Course { results, bench };
    let done = course
        .inputs(step)
        .filter_map(|input| course.ended(input.at));
    let after = done.map(Moment::from_instant).fold(earliest, later);
    if after > now { now } else { after }
}

fn later(one: Moment, other: Moment) -> Moment {
    if other > one { other } else { one }
}

/// Puts the dough of a rise in another place, or back; the timer of a rise that has begun follows.
pub fn put_rise(bench: &mut Bench, input: &DayInput, which: WhichRise, at: Option<Temperature>) {
    match which {
        WhichRise::Bulk => bench.bulk_place = at,
        WhichRise::Proof => bench.proof_place = at,
    }
    let put = bench.clone();
    let moved = DayInput {
        bench: Some(&put),
        ..*input
    };
    if let (false, Ok(results)) = (bench.bake.is_over(which.step()), of(&moved)) {
        run_timer(bench, &results, which.step());
    }
}

/// Sets the timer of a step that has begun: as long as the plan has it.
fn run_timer(bench: &mut Bench, results: &DayResults, step: StepAt) {
    let lasts = results
        .find(step)
        .map(|(one, timed)| one.timer(timed.lasts));
    if let (Some(began), Some(lasts)) = (bench.bake.began(step), lasts) {
        let began = began.instant();
        let ends = began.later(lasts);
        // The bread may be cool before the plan ends; nothing else is waited for then.
        let is_last = results.find(step).map(|(_, timed)| timed.ends) == Some(results.solved.table);
        let lies_ready = results.solved.table.since(results.ready_to_cut());
        let cools = step.work == StepKind::Cool && is_last && lies_ready < lasts;
        let ends = if cools {
            ends.earlier(lies_ready)
        } else {
            ends
        };
        bench.bake.expect(step, ends.since(began));
        bench.set_timer(step, Moment::from_instant(ends));
    }
}
