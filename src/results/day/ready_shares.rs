//! What each step adds to the range of the time the bread is ready, and what of it a wait absorbs.

use crate::engine::plan::{Plan, Solved, Step, StepKind, Timed, hands_between};
use crate::engine::quantity::{Instant, Minutes};
use crate::results::run::{Stage, StageKind};
use crate::sheet::day::Bake;

/// Which end of the range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadyEnd {
    /// How much sooner it may be ready.
    Soonest,
    /// How much later.
    Latest,
}

/// What the range of the time the bread is ready follows from.
#[derive(Clone, Copy, Debug)]
pub struct ReadyInput<'r> {
    /// The steps.
    pub plan: &'r Plan,
    /// Their times.
    pub solved: &'r Solved,
    /// The stages of the run.
    pub stages: &'r [Stage],
    /// How much sooner and how much later the dough has risen where it comes off the mixer as warm,
    /// and as cold, as it may; none where its temperature was measured.
    pub dough: [Minutes; 2],
    /// The bake under way.
    pub bake: Option<&'r Bake>,
    /// Now.
    pub now: Instant,
}

/// Just over a second, min.
const SECOND: f64 = 0.02;

impl ReadyInput<'_> {
    pub(super) fn step(&self, place: usize) -> Option<(&Step, &Timed)> {
        let step = self.plan.steps().get(place)?;
        Some((step, self.solved.steps.get(place)?))
    }

    /// Whether a step has begun; nothing before it counts any more.
    pub(super) fn has_begun(&self, place: usize) -> bool {
        let began = self
            .step(place)
            .and_then(|(step, _)| self.bake?.began(step.at));
        began.is_some()
    }

    /// The minutes by which a step may end sooner or later than planned, of its own and by the
    /// temperature of its dough. Of a step under way only what is left counts; of one that is over
    /// nothing.
    pub(super) fn shares(&self, place: usize, end: ReadyEnd) -> [f64; 2] {
        let Some((step, timed)) = self.step(place) else {
            return [0.0; 2];
        };
        let own = self.own(place, step, timed, end);
        let is_told = step.at.work == StepKind::Bulk && step.over_between.is_some();
        let [sooner, later] = self.dough.map(Minutes::minutes);
        let dough = match end {
            ReadyEnd::Soonest if is_told => sooner,
            ReadyEnd::Latest if is_told => later,
            ReadyEnd::Soonest | ReadyEnd::Latest => 0.0,
        };
        let left = self.left(step, timed, own.max(dough), end);
        [own * left, dough * left]
    }

    fn own(&self, place: usize, step: &Step, timed: &Timed, end: ReadyEnd) -> f64 {
        match step.at.work {
            StepKind::Bulk | StepKind::Proof | StepKind::LaterDough | StepKind::LaterProof => {
                let over = step.over_between;
                let likely = step.lasts.wished();
                over.map_or(0.0, |(soonest, latest)| end.from([soonest, likely, latest]))
            }
            StepKind::Bake if self.is_last_phase(place) => {
                self.bake_left(timed) * self.bake_share(end)
            }
            StepKind::LaterBake => timed.lasts.minutes() * self.bake_share(end),
            StepKind::Cool => end.from(self.cooling(step, timed)),
            StepKind::Scald
            | StepKind::MixPreferment
            | StepKind::Mix
            | StepKind::ButterIn
            | StepKind::Divide
            | StepKind::Round
            | StepKind::Shape
            | StepKind::Tin
            | StepKind::Melt
            | StepKind::Drizzle
            | StepKind::Brush
            | StepKind::Refill
            | StepKind::Own => end.from(hands_between(step.hands)),
            // A clock says when these are over; an oven may wait hot.
            StepKind::Bake
            | StepKind::CoolPaste
            | StepKind::ChillPaste
            | StepKind::StandPreferment
            | StepKind::ChillPreferment
            | StepKind::WarmUp
            | StepKind::Rest
            | StepKind::Preheat => 0.0,
        }
    }

    /// The share of a step that is left: all before it begins, none once it is over. A rise that
    /// is late may still be so at its planned end, and is not any more at its latest.
    fn left(&self, step: &Step, timed: &Timed, later: f64, end: ReadyEnd) -> f64 {
        let Some(began) = self.bake.and_then(|bake| bake.began(step.at)) else {
            return 1.0;
        };
        if self.bake.is_some_and(|bake| bake.is_over(step.at)) {
            return 0.0;
        }
        let lasts = step.timer(timed.lasts).minutes();
        let whole = match end {
            ReadyEnd::Soonest => lasts,
            ReadyEnd::Latest => lasts + later,
        };
        let gone = self.now.since(began.instant()).minutes();
        if whole > 0.0 {
            ((whole - gone) / whole).clamp(0.0, 1.0)
        } else {
            0.0
        }
    }

    fn phases(&self) -> impl Iterator<Item = (usize, &Step, &Timed)> {
        let steps = self.plan.steps().iter().zip(&self.solved.steps);
        let numbered = steps.enumerate();
        let phases = numbered.filter(|(_, (step, _))| step.at.work == StepKind::Bake);
        phases.map(|(place, (step, timed))| (place, step, timed))
    }

    /// One bake is as wrong in all its phases: the last stands for all.
    fn is_last_phase(&self, place: usize) -> bool {
        let latest = self.phases().max_by_key(|(_, _, timed)| timed.ends);
        latest.is_some_and(|(last, _, _)| last == place)
    }

    /// The minutes of the bake that are not over before its last phase, and those of that phase.
    fn bake_left(&self, last: &Timed) -> f64 {
        let earlier = self
            .phases()
            .filter(|(_, _, timed)| timed.begins != last.begins);
        let earlier = earlier.map(|(_, step, timed)| {
            timed.lasts.minutes() * self.left(step, timed, 0.0, ReadyEnd::Soonest)
        });
        earlier.sum::<f64>() + last.lasts.minutes()
    }

    /// How far a bake is off, of its own length.
    fn bake_share(&self, end: ReadyEnd) -> f64 {
        let bake = self.stage(StageKind::Bake);
        let share = bake.map(|bake| {
            let [_, likely, _] = bake.lasts;
            end.from(bake.lasts) / likely.minutes()
        });
        share.filter(|share| share.is_finite()).unwrap_or(0.0)
    }

    fn stage(&self, kind: StageKind) -> Option<&Stage> {
        self.stages.iter().find(|stage| stage.kind == kind)
    }

    /// How long the bread cools: at the soonest, as planned or as is likely, at the latest.
    fn cooling(&self, step: &Step, timed: &Timed) -> [Minutes; 3] {
        let [soonest, likely, latest] = self
            .stage(StageKind::Cool)
            .map_or([step.lasts.wished(); 3], |stage| stage.lasts);
        let planned = if timed.lasts < likely {
            timed.lasts
        } else {
            likely
        };
        [soonest, planned, latest]
    }

    /// How long the bread lies ready in a plan whose last step has it wait longer than it cools.
    pub(super) fn lies_ready(&self) -> Minutes {
        let steps = self.plan.steps().iter().zip(&self.solved.steps);
        let last = steps.max_by_key(|(_, timed)| timed.ends);
        let Some((step, timed)) = last.filter(|(step, _)| step.at.work == StepKind::Cool) else {
            return Minutes::ZERO;
        };
        let is_over = self.bake.is_some_and(|bake| bake.is_over(step.at));
        let [_, likely, _] = self.cooling(step, timed);
        let longer = timed.lasts.minutes() - likely.minutes();
        // Times are whole seconds.
        if is_over || longer < SECOND {
            Minutes::ZERO
        } else {
            Minutes::from_minutes(longer).unwrap_or(Minutes::ZERO)
        }
    }

    /// The minutes of lateness, or of being early, that a step absorbs since it may be shortened or
    /// lengthened: what is in the fridge.
    pub(super) fn absorbs(&self, place: usize, end: ReadyEnd) -> f64 {
        let Some((step, timed)) = self.step(place) else {
            return 0.0;
        };
        let lasts = timed.lasts.minutes();
        let absorbed = match (step.at.work, end) {
            (StepKind::ChillPaste | StepKind::ChillPreferment, ReadyEnd::Latest) => {
                lasts - step.lasts.least().minutes()
            }
            (StepKind::ChillPaste | StepKind::ChillPreferment, ReadyEnd::Soonest) => {
                step.lasts.most().minutes() - lasts
            }
            _ => 0.0,
        };
        // Times are whole seconds.
        if absorbed < SECOND { 0.0 } else { absorbed }
    }
}

impl ReadyEnd {
    /// How far this end lies from what is likely, min.
    fn from(self, [soonest, likely, latest]: [Minutes; 3]) -> f64 {
        let away = match self {
            Self::Soonest => likely.minutes() - soonest.minutes(),
            Self::Latest => latest.minutes() - likely.minutes(),
        };
        away.max(0.0)
    }
}
