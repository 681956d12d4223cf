//! Planned: a formula's rises, steps and times in one kitchen, by one clock.

use super::bake::Bake;
use super::wishes::{DayWishes, Target};
use crate::engine::kitchen::{HeatWishes, Kitchen, Known, Rising, TimesAsked, rising, times};
use crate::engine::learn::Learnt;
use crate::engine::plan::{
    Aim, Around, Done, Lasts, Plan, PlanError, Solved, edited, solve, usual,
};
use crate::engine::quantity::{Factor, Instant, Minutes};
use crate::sheet::civil::{Clock, Zone, nights};
use crate::sheet::{Moment, Sheet};

/// What a plan is made from.
#[derive(Clone, Copy, Debug)]
pub struct DayAsked<'a> {
    /// The formula, with its batch and what it asks of heat.
    pub sheet: &'a Sheet,
    /// The kitchen.
    pub kitchen: &'a Kitchen,
    /// What the plan goes by.
    pub wishes: &'a DayWishes,
    /// What bakes have taught.
    pub learnt: &'a Learnt,
    /// How many times as fast as the formula as it is kept, for what was changed in it.
    pub vigour: Factor,
    /// The zone of the clock on the wall.
    pub zone: &'a Zone,
    /// Now.
    pub now: Moment,
    /// The bake under way, if there is one.
    pub bake: Option<&'a Bake>,
}

/// A plan with its times.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// What the rises are scaled from.
    pub known: Known,
    /// The rises.
    pub rising: Rising,
    /// The steps.
    pub plan: Plan,
    /// What the times were found from.
    pub aim: Aim,
    /// Their times.
    pub solved: Solved,
    /// How long one load bakes.
    pub bake: Minutes,
}

/// When bread is on the table where nobody has said, and how far off it is at the least.
const TEA: Clock = Clock::known(16, 0);
const AHEAD: i64 = 20 * 3600;
/// How far around the table nights are looked at.
const AROUND_DAYS: f64 = 6.0;

/// A formula's plan.
///
/// # Errors
/// [`PlanError`] where fridge limits are in no order, or nothing is left of the steps.
pub fn planned(asked: &DayAsked) -> Result<Planned, PlanError> {
    let DayAsked {
        sheet,
        kitchen,
        wishes,
        ..
    } = asked;
    let known = known(asked);
    let heat = heat(asked);
    let rising = rising(&sheet.formula, kitchen, &heat, &wishes.rises, &known);
    let times_asked = TimesAsked {
        chill: wishes.in_fridge()?,
        loads: wishes.loads,
        pieces: sheet.batch.pieces.get(),
    };
    let times = times(
        &sheet.formula,
        kitchen,
        &sheet.heat,
        &wishes.rises,
        &rising,
        &times_asked,
    );
    let bake: f64 = times.bake.iter().map(|phase| phase.minutes()).sum();
    let plan = edited(&usual(&sheet.formula, &times)?, &wishes.edits)?;
    let aim = aim(asked);
    let solved = solve(&plan, aim, &around(asked, &plan, aim));
    Ok(Planned {
        known,
        rising,
        plan,
        aim,
        solved,
        bake: held(bake),
    })
}

/// What the formula asks of heat; a dough that is there is as warm as it really is.
fn heat(asked: &DayAsked) -> HeatWishes {
    let mut heat = asked.sheet.heat.clone();
    if let Some(warm) = asked.bake.and_then(|bake| bake.noted.dough) {
        heat.dough = warm;
    }
    heat
}

/// What the formula says of its rises, as this kitchen has taught it.
fn known(asked: &DayAsked) -> Known {
    let stated = Known::stated(&asked.wishes.rises);
    let learnt = |factor: &Option<crate::engine::learn::LearntFactor>, anchor| {
        factor
            .as_ref()
            .map_or(anchor, |factor| factor.anchor(anchor))
    };
    Known {
        bulk: learnt(&asked.learnt.bulk, stated.bulk),
        proof: learnt(&asked.learnt.proof, stated.proof),
        vigour: asked.vigour,
    }
}

fn aim(asked: &DayAsked) -> Aim {
    match asked.wishes.target {
        Target::Table(at) => Aim::Table(at.instant()),
        Target::From(at) => Aim::From(at.instant()),
        Target::Open => Aim::Table(open_table(asked.zone, asked.now)),
    }
}

/// The next afternoon that leaves time for a night in between.
#[must_use]
pub fn open_table(zone: &Zone, now: Moment) -> Instant {
    let soonest = now.instant().seconds().saturating_add(AHEAD);
    let today = zone.civil(now.instant()).date;
    let days = (0..4).map(|days| zone.instant(today.plus(days), TEA).last());
    days.into_iter()
        .find(|at| at.seconds() >= soonest)
        .unwrap_or(now.instant())
}

fn around(asked: &DayAsked, plan: &Plan, aim: Aim) -> Around {
    let (Aim::Table(at) | Aim::From(at)) = aim;
    let days = Minutes::from_hours(AROUND_DAYS * 24.0).unwrap_or(Minutes::ZERO);
    let asleep = asked.wishes.sleep.map_or_else(Vec::new, |sleep| {
        let (from, until) = (at.earlier(days), at.later(days));
        nights(asked.zone, (sleep.from, sleep.until), from, until)
    });
    Around {
        asleep,
        now: Some(asked.now.instant()),
        done: asked.bake.map_or_else(Vec::new, |bake| done(bake, plan)),
        one_pair_of_hands: asked.wishes.one_pair_of_hands,
    }
}

/// The steps of a bake that the plan has too.
fn done(bake: &Bake, plan: &Plan) -> Vec<Done> {
    let steps = bake.steps.iter().filter_map(|done| {
        Some(Done {
            step: plan.place(done.step)?,
            began: done.began.instant(),
            ended: done.ended.map(Moment::instant),
        })
    });
    steps.collect()
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}

impl Planned {
    /// How long a step of the plan is wished to last, and may.
    #[must_use]
    pub fn lasts(&self, step: usize) -> Option<Lasts> {
        self.plan.steps().get(step).map(|step| step.lasts)
    }
}
