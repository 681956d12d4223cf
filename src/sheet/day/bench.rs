//! The bench: the bake under way, its timers and what has been weighed, so that nothing is lost.

use super::bake::Bake;
use crate::engine::formula::LineAt;
use crate::engine::plan::{Edit, StepAt};
use crate::engine::quantity::{Instant, Mass, Minutes, Temperature};
use crate::sheet::Moment;

/// A timer: when it is over, not how far it has ticked, so that it outlives a reload and a locked
/// phone.
#[derive(Clone, Debug, PartialEq)]
pub struct Timer {
    /// Which step it belongs to.
    pub step: StepAt,
    /// When it is over.
    pub ends: Moment,
    /// Whether it has been heard.
    pub heard: bool,
}

/// What really went in of one line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weighing {
    /// Which line.
    pub at: LineAt,
    /// How much; `None` where it was just as asked.
    pub mass: Option<Mass>,
}

/// When a step was to begin, as the plan stood when the bake began.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanSnapshot {
    /// Which step.
    pub step: StepAt,
    /// When.
    pub begins: Moment,
    /// How long it was to last.
    pub lasts: Minutes,
}

/// How warm a paste or preferment was found at a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// At which step.
    pub step: StepAt,
    /// Which part of the formula.
    pub part: u16,
    /// How warm.
    pub at: Temperature,
    /// When.
    pub when: Moment,
}

/// The bake under way.
#[derive(Clone, Debug, PartialEq)]
pub struct Bench {
    /// What is noted so far.
    pub bake: Bake,
    /// The step that is looked at; `None` is the first.
    pub at: Option<StepAt>,
    /// Its timers; at most [`Bench::MOST_TIMERS`].
    pub timers: Vec<Timer>,
    /// What has been weighed; at most [`Bench::MOST_WEIGHINGS`].
    pub weighed: Vec<Weighing>,
    /// The steps whose paste or preferment is in the mixer; at most [`Bench::MOST_PUT_IN`].
    pub put_in: Vec<StepAt>,
    /// How the plan stood when the bake began; at most [`crate::engine::plan::Plan::MOST`] steps.
    pub planned: Vec<PlanSnapshot>,
    /// How warm pastes and preferments were found; at most [`Bench::MOST_MEASURED`].
    pub measured: Vec<Measured>,
    /// What makes up in this bake for what went otherwise; at most [`Edit::MOST`].
    pub edits: Vec<Edit>,
    /// How warm it is where the dough of this bake rises, where it was put elsewhere.
    pub bulk_place: Option<Temperature>,
    /// How warm it is where its pieces proof.
    pub proof_place: Option<Temperature>,
    /// What was typed of lines that were then taken back; at most [`Bench::MOST_WEIGHINGS`].
    pub set_aside: Vec<Weighing>,
    /// The step that was begun before it was due, until it is done.
    pub early: Option<StepAt>,
}

impl Bench {
    /// The most pastes and preferments that are noted.
    pub const MOST_PUT_IN: usize = 24;
    /// The most timers there may be.
    pub const MOST_TIMERS: usize = 12;
    /// The most weighings there may be.
    pub const MOST_WEIGHINGS: usize = crate::engine::formula::Formula::MOST_LINES;

    /// The most temperatures of pastes and preferments there may be.
    pub const MOST_MEASURED: usize = 60;

    /// A bench with a new bake.
    #[must_use]
    pub const fn new(bake: Bake) -> Self {
        Self {
            bake,
            at: None,
            timers: Vec::new(),
            weighed: Vec::new(),
            put_in: Vec::new(),
            planned: Vec::new(),
            measured: Vec::new(),
            edits: Vec::new(),
            bulk_place: None,
            proof_place: None,
            set_aside: Vec::new(),
            early: None,
        }
    }

    /// The step that is being done: the one that is looked at, else the last that has begun and goes on.
    #[must_use]
    pub fn current(&self) -> Option<StepAt> {
        let going = self.bake.steps.iter().rev();
        let mut going = going.filter(|done| done.ended.is_none());
        self.at.or_else(|| going.next().map(|done| done.step))
    }

    /// How a step stood in the plan when the bake began.
    #[must_use]
    pub fn planned(&self, step: StepAt) -> Option<&PlanSnapshot> {
        self.planned.iter().find(|one| one.step == step)
    }

    /// When the bread was to be on the table as the bake began.
    #[must_use]
    pub fn planned_table(&self) -> Option<Instant> {
        let ends = |one: &PlanSnapshot| one.begins.instant().later(one.lasts);
        self.planned.iter().map(ends).max()
    }

    /// Notes how warm a part was found at a step, in place of what was found there before.
    pub fn measure(&mut self, found: Measured) {
        let same = |other: &Measured| other.step == found.step && other.part == found.part;
        self.measured.retain(|other| !same(other));
        if self.measured.len() < Self::MOST_MEASURED {
            self.measured.push(found);
        }
    }

    /// How warm a part was found at a step.
    #[must_use]
    pub fn found(&self, step: StepAt, part: u16) -> Option<&Measured> {
        let all = self.measured.iter();
        all.rev()
            .find(|found| found.step == step && found.part == part)
    }

    /// Sets how long a step of this bake lasts, in place of an earlier such change; its timer, if
    /// it has one, follows.
    pub fn let_last(&mut self, step: StepAt, minutes: Minutes) {
        let same = |edit: &Edit| matches!(edit, Edit::Duration { step: of, .. } if *of == step);
        self.edits.retain(|edit| !same(edit));
        if self.edits.len() < Edit::MOST {
            self.edits.push(Edit::Duration { step, minutes });
        }
        let began = self.bake.began(step);
        let ends = began.map(|began| Moment::from_instant(began.instant().later(minutes)));
        if let Some(ends) = ends
            && self.timers.iter().any(|timer| timer.step == step)
        {
            self.set_timer(step, ends);
        }
    }

    /// Lets a step last for this long from now on, with a timer; it begins now if it has not begun.
    pub fn wait(&mut self, step: StepAt, now: Moment, minutes: Minutes) {
        self.bake.begin(step, now);
        let began = self.bake.began(step).unwrap_or(now);
        let ends = now.instant().later(minutes);
        self.let_last(step, ends.since(began.instant()));
        self.set_timer(step, Moment::from_instant(ends));
    }

    /// Notes when a step that has begun really began; its timer, if it has one, moves with it.
    pub fn began_at(&mut self, step: StepAt, began: Moment) {
        let was = self.bake.began(step);
        self.bake.began_at(step, began);
        let mut timers = self.timers.iter_mut();
        if let Some(was) = was
            && let Some(timer) = timers.find(|timer| timer.step == step)
        {
            let lasts = timer.ends.instant().since(was.instant());
            timer.ends = Moment::from_instant(began.instant().later(lasts));
        }
    }

    /// Notes that a step ends; its timer ends with it.
    pub fn end(&mut self, step: StepAt, now: Moment) {
        self.bake.end(step, now);
        self.stop_timer(step);
    }

    /// Notes that what a step made is in the mixer, or is not.
    pub fn put_in(&mut self, made: StepAt, is_in: bool) {
        self.put_in.retain(|other| *other != made);
        if is_in && self.put_in.len() < Self::MOST_PUT_IN {
            self.put_in.push(made);
        }
    }

    /// Sets a step's timer, in place of the one it may have.
    pub fn set_timer(&mut self, step: StepAt, ends: Moment) {
        self.timers.retain(|timer| timer.step != step);
        if self.timers.len() < Self::MOST_TIMERS {
            self.timers.push(Timer {
                step,
                ends,
                heard: false,
            });
        }
    }

    /// The timers that are over and have not been heard; none of a step that is over itself.
    pub fn over(&self, now: Moment) -> impl Iterator<Item = &Timer> {
        let timers = self.timers.iter();
        timers.filter(move |timer| {
            !timer.heard && timer.is_over(now) && !self.bake.is_over(timer.step)
        })
    }

    /// Notes that every timer that is over has been heard.
    pub fn hear(&mut self, now: Moment) {
        for timer in self.timers.iter_mut().filter(|timer| timer.is_over(now)) {
            timer.heard = true;
        }
    }

    /// Notes what went in of a line, in place of what was noted before.
    pub fn weigh(&mut self, at: LineAt, mass: Option<Mass>) {
        self.weighed.retain(|weighing| weighing.at != at);
        self.set_aside.retain(|weighing| weighing.at != at);
        if self.weighed.len() < Self::MOST_WEIGHINGS {
            self.weighed.push(Weighing { at, mass });
        }
    }

    /// Notes that a line went in: the mass that was typed of it, else what is asked.
    pub fn tick(&mut self, at: LineAt) {
        self.weigh(at, self.typed(at));
    }

    /// Takes back that a line was weighed; the mass that was typed of it is set aside.
    pub fn unweigh(&mut self, at: LineAt) {
        let typed = self.weighing(at).copied();
        self.weighed.retain(|weighing| weighing.at != at);
        let has_room = self.set_aside.len() < Self::MOST_WEIGHINGS;
        self.set_aside
            .extend(typed.filter(|typed| typed.mass.is_some() && has_room));
    }

    /// The mass that was typed of a line, whether it is in or was taken back.
    #[must_use]
    pub fn typed(&self, at: LineAt) -> Option<Mass> {
        let all = self.weighed.iter().chain(&self.set_aside);
        all.filter(|weighing| weighing.at == at)
            .find_map(|weighing| weighing.mass)
    }

    /// Stops a step's timer.
    pub fn stop_timer(&mut self, step: StepAt) {
        self.timers.retain(|timer| timer.step != step);
    }

    /// What was noted of a line; `None` where it has not been weighed.
    #[must_use]
    pub fn weighing(&self, at: LineAt) -> Option<&Weighing> {
        self.weighed.iter().find(|weighing| weighing.at == at)
    }
}

impl Timer {
    /// Whether it is over.
    #[must_use]
    pub fn is_over(&self, now: Moment) -> bool {
        self.ends <= now
    }

    /// How long it still runs; no time where it is over.
    #[must_use]
    pub fn left(&self, now: Moment) -> Minutes {
        let milliseconds = (self.ends.milliseconds() - now.milliseconds()).max(0.0);
        Minutes::from_minutes(milliseconds / 60_000.0).unwrap_or(Minutes::ZERO)
    }
}
