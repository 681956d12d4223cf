//! The course of a bake at the bench: what is to be done now, and what runs beside it.

use super::bench_order::{bench_order, is_counted};
use super::day_results::DayResults;
use super::doing::{Doing, doing};
use crate::engine::plan::{Step, StepAt, Timed};
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::Moment;
use crate::sheet::day::{Bench, Timer};

/// What the bench shows.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BenchScreen {
    /// The step to do, or the next one while there is nothing to do; `None` after the last.
    pub step: Option<StepAt>,
    /// Until when there is nothing to do; `None` where the step is due.
    pub idle_until: Option<Instant>,
    /// What runs meanwhile and is waited for.
    pub waits_for: Option<StepAt>,
    /// The step that *Back* takes up again, or begins later; `None` where none is done.
    pub previous: Option<StepAt>,
    /// The number of the step, counted from one.
    pub number: usize,
    /// How many steps there are.
    pub of: usize,
}

/// A step that waits for nothing begins sooner than planned by this much if hands are free, min.
/// Common practice.
const SOON: f64 = 10.0;

/// What the bench shows at a moment.
///
/// ```
/// use softcrumb::results::day::{BenchScreen, bench_screen};
/// use softcrumb::sheet::Moment;
///
/// // Without a plan there is no step.
/// assert_eq!(bench_screen(None, None, Moment::default()), BenchScreen::default());
/// ```
#[must_use]
pub fn bench_screen(
    results: Option<&DayResults>,
    bench: Option<&Bench>,
    now: Moment,
) -> BenchScreen {
    let (Some(results), Some(bench)) = (results, bench) else {
        return BenchScreen::default();
    };
    let course = Course { results, bench };
    let order = course.order();
    let chosen = bench.at.filter(|at| course.is_open(*at));
    let chosen = chosen.filter(|at| order.contains(at));
    let mut open = order.iter().copied().filter(|at| course.is_open(*at));
    let step = chosen.or_else(|| open.next());
    // Counted by what is done: steps without an order of their own may change places meanwhile.
    let done = order.iter().filter(|at| !course.is_open(**at)).count();
    let is_due = chosen.is_some() || step.is_some_and(|step| course.is_due(step, now));
    let waits_for = step.map_or_else(
        || course.last_running(order.iter().copied()),
        |step| course.last_running(course.inputs(step).map(|input| input.at)),
    );
    let until = match step {
        Some(step) => course.can_begin(step),
        None => Some(results.ready_to_cut()),
    };
    BenchScreen {
        step,
        idle_until: until.filter(|until| !is_due && *until > now.instant()),
        // A rise that runs beside other work is watched too.
        waits_for: waits_for
            .or_else(|| course.last_running(course.by_themselves()))
            .filter(|_| !is_due),
        previous: course.begun_early().or_else(|| course.last_done()),
        number: done.saturating_add(1).min(order.len()),
        of: order.len(),
    }
}

/// The timers that run beside what the bench shows: not those that are over of what a step that is
/// due has waited for.
#[must_use]
pub fn timers_beside(
    bench: &Bench,
    results: &DayResults,
    screen: &BenchScreen,
    now: Moment,
) -> Vec<Timer> {
    let course = Course { results, bench };
    let due = screen.step.filter(|_| screen.idle_until.is_none());
    let waited = |timer: &Timer| {
        let mut inputs = due.into_iter().flat_map(|due| course.inputs(due));
        timer.is_over(now) && inputs.any(|input| input.at == timer.step)
    };
    let timers = bench.timers.iter();
    timers.filter(|timer| !waited(timer)).cloned().collect()
}

/// A bake and its plan.
#[derive(Clone, Copy)]
pub(super) struct Course<'c> {
    pub(super) results: &'c DayResults,
    pub(super) bench: &'c Bench,
}

impl<'c> Course<'c> {
    /// The steps that the baker does or sets going, by their times.
    fn order(self) -> Vec<StepAt> {
        bench_order(self.results)
    }

    /// The steps that begin when the work before them is done.
    fn by_themselves(self) -> impl Iterator<Item = StepAt> {
        let steps = self.results.plan.steps().iter();
        let by_themselves = steps.filter(|step| !is_counted(step));
        by_themselves.map(|step| step.at)
    }

    /// What a step waits for.
    pub(super) fn inputs(self, at: StepAt) -> impl Iterator<Item = &'c Step> {
        let after = self.results.find(at).map(|(step, _)| step.after.as_slice());
        let steps = self.results.plan.steps();
        after
            .unwrap_or_default()
            .iter()
            .filter_map(|place| steps.get(*place))
    }

    /// When a step was done or set going; `None` where it still is to be.
    pub(super) fn done_at(self, at: StepAt) -> Option<Moment> {
        let mut steps = self.bench.bake.steps.iter();
        let done = steps.find(|done| done.step == at)?;
        match doing(at.work) {
            Doing::ByHand => done.ended,
            Doing::SetGoing | Doing::ByItself => Some(done.began),
        }
    }

    fn is_open(self, at: StepAt) -> bool {
        self.done_at(at).is_none()
    }

    /// The step that was begun before it was due, and is not done.
    pub(super) fn begun_early(self) -> Option<StepAt> {
        let early = self.bench.early?;
        (self.bench.at == Some(early) && self.is_open(early)).then_some(early)
    }

    /// The step that was done last; of several at once the later in the plan.
    pub(super) fn last_done(self) -> Option<StepAt> {
        let done = self.order().into_iter();
        let done = done.filter_map(|at| Some((at, self.done_at(at)?)));
        let last = done.fold(None, |last: Option<(StepAt, Moment)>, one| match last {
            Some(last) if last.1 > one.1 => Some(last),
            Some(_) | None => Some(one),
        });
        last.map(|(at, _)| at)
    }

    /// When a step that has begun is over by the plan; `None` where it has not begun.
    pub(super) fn ends(self, at: StepAt) -> Option<Instant> {
        let timer = self.bench.timers.iter().find(|timer| timer.step == at);
        if let Some(timer) = timer {
            return Some(timer.ends.instant());
        }
        let began = self.bench.bake.began(at)?.instant();
        let (step, timed): (&Step, &Timed) = self.results.find(at)?;
        Some(began.later(step.timer(timed.lasts)))
    }

    /// When a step that has begun is over at the soonest: a rise or a bake by the range of its model,
    /// what may last longer or shorter after the least; `None` where it has not begun.
    pub(super) fn soonest_end(self, step: &Step) -> Option<Instant> {
        let began = self.bench.bake.began(step.at)?.instant();
        let (_, timed) = self.results.find(step.at)?;
        let planned = step.timer(timed.lasts);
        let soonest = step
            .over_between
            .map_or(step.lasts.least(), |(soonest, _)| soonest);
        Some(began.later(if soonest < planned { soonest } else { planned }))
    }

    /// When a step was over: as noted, else by the plan.
    pub(super) fn ended(self, at: StepAt) -> Option<Instant> {
        let mut steps = self.bench.bake.steps.iter();
        let done = steps.find(|done| done.step == at)?;
        let noted = done.ended.map(Moment::instant);
        noted.or_else(|| self.ends(at))
    }

    /// Those of some steps that have begun and are not noted as over: the one that ends last.
    fn last_running(self, steps: impl Iterator<Item = StepAt>) -> Option<StepAt> {
        let running = steps.filter(|at| doing(at.work) != Doing::ByHand);
        let running = running.filter(|at| !self.bench.bake.is_over(*at));
        let ends = running.filter_map(|at| Some((at, self.ends(at)?)));
        ends.max_by_key(|(_, ends)| *ends).map(|(at, _)| at)
    }

    /// When a step can begin: as planned, and not before what runs for it is over.
    pub(super) fn can_begin(self, at: StepAt) -> Option<Instant> {
        let planned = self.results.find(at).map(|(_, timed)| timed.begins);
        let running = self.last_running(self.inputs(at).map(|input| input.at));
        let ends = running.and_then(|running| self.ends(running));
        planned.into_iter().chain(ends).max()
    }

    /// Whether a step is due: what runs for it is over, and all it waits for is done or its time has
    /// come.
    fn is_due(self, at: StepAt, now: Moment) -> bool {
        let now = now.instant();
        let mut inputs = self.inputs(at).peekable();
        let any = inputs.peek().is_some();
        let over = |input: &Step| self.ended(input.at).is_some_and(|ended| ended <= now);
        if any {
            let (mut all, mut runs) = (true, false);
            for input in inputs {
                let is_over = self.bench.bake.is_over(input.at) || over(input);
                all = all && is_over && self.done_at(input.at).is_some();
                runs = runs || (self.done_at(input.at).is_some() && !is_over);
            }
            return all || (!runs && self.begins_by(at, now));
        }
        let soon = Minutes::from_minutes(SOON).unwrap_or(Minutes::ZERO);
        self.begins_by(at, now.later(soon))
    }

    fn begins_by(self, at: StepAt, now: Instant) -> bool {
        let timed = self.results.find(at).map(|(_, timed)| timed.begins);
        timed.is_none_or(|begins| begins <= now)
    }
}
