//! Made up: how the plan moved since a bake began, and what makes up for a rise that goes otherwise.

use super::day_results::{DayAsked, Planned, heat, rises};
use super::rise_place::{RisePlace, WhichRise, rise_place};
use super::rises::{Rising, rising};
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::Moment;
use crate::sheet::day::{Bench, PlanSnapshot};

/// A rise that takes another time than it was to take, or begins later.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiseOff {
    /// Which of the two.
    pub which: WhichRise,
    /// How long it was to take.
    pub wished: Minutes,
    /// How long it takes where it is put now.
    pub now: Minutes,
    /// How much later than promised it begins; no time where it does not.
    pub late: Minutes,
    /// A place in which it is up when it was to be, or as near to it as can be.
    pub place: Option<RisePlace>,
    /// Where it was put to make up for it.
    pub chosen: Option<Temperature>,
}

/// What is smaller than this is no difference, min.
const NOTHING: f64 = 2.0;

/// How the plan stands, to be kept when a bake begins.
#[must_use]
pub fn promise(planned: &Planned) -> Vec<PlanSnapshot> {
    let steps = planned.plan.steps().iter().zip(&planned.solved.steps);
    let promised = steps.map(|(step, timed)| PlanSnapshot {
        step: step.at,
        begins: Moment::from_instant(timed.begins),
        lasts: timed.lasts,
    });
    promised.collect()
}

/// The steps that are not over and last otherwise than promised: which, how long they were to last,
/// how long they do.
#[must_use]
pub fn gives(planned: &Planned, bench: &Bench) -> Vec<(StepAt, Minutes, Minutes)> {
    let is_over = |at: StepAt| {
        let mut done = bench.bake.steps.iter();
        done.any(|done| done.step == at && done.ended.is_some())
    };
    let steps = planned.plan.steps().iter().zip(&planned.solved.steps);
    let found = steps.filter_map(|(step, timed)| {
        let was = bench.promised(step.at)?.lasts;
        let off = (was.minutes() - timed.lasts.minutes()).abs();
        (!is_over(step.at) && off >= NOTHING).then_some((step.at, was, timed.lasts))
    });
    found.collect()
}

/// How a rise of the bake under way goes otherwise than it was to, and what makes up for it;
/// nothing where it goes as it was to, is over, or cannot be worked out.
#[must_use]
pub fn rise_off(asked: &DayAsked, planned: &Planned, which: WhichRise) -> Option<RiseOff> {
    let bench = asked.bench?;
    let late = late(planned, bench, which)?;
    let now = due(&planned.rising, which)?;
    // As it was to be: a dough as warm as wished, in its usual place.
    let usual = asked.settings.rises;
    let (formula, kitchen, known) = (&asked.sheet.formula, asked.kitchen, &planned.known);
    let as_wished = rising(formula, kitchen, &asked.sheet.heat, &usual, known);
    let wished = due(&as_wished, which)?;
    let chosen = match which {
        WhichRise::Bulk => bench.bulk_place,
        WhichRise::Proof => bench.proof_place,
    };
    let off = (now.minutes() - wished.minutes()).abs() >= NOTHING;
    if !off && late <= Minutes::ZERO && chosen.is_none() {
        return None;
    }
    let wanted = Minutes::from_minutes((wished.minutes() - late.minutes()).max(0.0)).ok()?;
    let (heat, rises) = (heat(asked), rises(asked));
    Some(RiseOff {
        which,
        wished,
        now,
        late,
        place: rise_place(formula, kitchen, &heat, &rises, known, (which, wanted)),
        chosen,
    })
}

fn due(rising: &Rising, which: WhichRise) -> Option<Minutes> {
    let risen = match which {
        WhichRise::Bulk => &rising.bulk,
        WhichRise::Proof => &rising.proof,
    };
    risen.as_ref().ok().map(|risen| risen.due)
}

/// How much later than promised it begins; nothing where it is over, or was never promised.
fn late(planned: &Planned, bench: &Bench, which: WhichRise) -> Option<Minutes> {
    let work = match which {
        WhichRise::Bulk => StepKind::Bulk,
        WhichRise::Proof => StepKind::Proof,
    };
    let at = StepAt { work, of: 0 };
    let done = bench.bake.steps.iter().find(|done| done.step == at);
    if done.is_some_and(|done| done.ended.is_some()) {
        return None;
    }
    let planned_at = planned.plan.place(at)?;
    let begins = match done {
        Some(done) => done.began.instant(),
        None => planned.solved.steps.get(planned_at)?.begins,
    };
    let late = begins.since(bench.promised(at)?.begins.instant());
    Some(if late.minutes() >= NOTHING {
        late
    } else {
        Minutes::ZERO
    })
}
