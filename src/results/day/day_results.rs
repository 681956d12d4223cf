//! Planned: a formula's rises, steps and times in one kitchen, by one clock.

use super::rises::{Known, Rising, rising};
use crate::engine::formula::{Form, Formula};
use crate::engine::learn::Learnt;
use crate::engine::plan::{
    Aim, Around, Done, DurationRange, Plan, PlanError, Solved, edited, solve, usual,
};
use crate::engine::quantity::{Factor, Instant, Minutes};
use crate::engine::rise::{RiseError, RiseSettings, Risen, Stated, YeastActivity, yeast_activity};
use crate::results::heat::{TimesAsked, times};
use crate::sheet::civil::{Clock, Zone, nights};
use crate::sheet::day::{Bake, Bench, DaySettings, Target};
use crate::sheet::{HeatSettings, Kitchen};
use crate::sheet::{Moment, Sheet};

/// What a plan is made from.
#[derive(Clone, Copy, Debug)]
pub struct DayAsked<'a> {
    /// The formula, with its batch and what it asks of heat.
    pub sheet: &'a Sheet,
    /// The kitchen.
    pub kitchen: &'a Kitchen,
    /// What the plan goes by.
    pub settings: &'a DaySettings,
    /// What bakes have taught.
    pub learnt: &'a Learnt,
    /// The formula as it was really weighed, where a bake is under way.
    pub weighed: Option<&'a Formula>,
    /// The zone of the clock on the wall.
    pub zone: &'a Zone,
    /// Now.
    pub now: Moment,
    /// The bake under way, if there is one.
    pub bench: Option<&'a Bench>,
}

/// A plan with its times.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// What the rises are scaled from.
    pub known: Known,
    /// What is in the dough, and what was in that of the known rises, where that is noted.
    pub doughs: Option<(YeastActivity, YeastActivity)>,
    /// The rises.
    pub rising: Rising,
    /// The steps.
    pub plan: Plan,
    /// What the times were found from.
    pub aim: Aim,
    /// Their times.
    pub solved: Solved,
    /// The bake of one load, as the programme has it.
    pub programme: Minutes,
    /// The bake of one load, as this oven bakes.
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
        settings,
        ..
    } = asked;
    let (known, doughs, rising) = rises_now(asked);
    let times_asked = TimesAsked {
        bulk: over(&rising.bulk, settings.rises.bulk),
        proof: over(&rising.proof, settings.rises.proof),
        chill: settings.in_fridge()?,
        loads: settings.loads,
        pieces: sheet.batch.pieces.get(),
    };
    let mut times = times(
        &sheet.formula,
        kitchen,
        &sheet.heat,
        &settings.rises,
        &times_asked,
    );
    let programme = all_of(&times.bake);
    times.bake = as_this_oven_bakes(&times.bake, asked.learnt);
    let mut plan = edited(&usual(&sheet.formula, &times)?, &settings.edits)?;
    if let Some(bench) = asked.bench {
        plan = edited(&plan, &bench.edits)?;
    }
    let aim = aim(asked);
    let solved = solve(&plan, aim, &around(asked, &plan, aim));
    Ok(Planned {
        known,
        doughs,
        rising,
        plan,
        aim,
        solved,
        programme,
        bake: all_of(&times.bake),
    })
}

/// Soonest, likely, latest; what the formula says of itself where the rise cannot be worked out.
fn over(risen: &Result<Risen, RiseError>, stated: Stated) -> [Minutes; 3] {
    match risen {
        Ok(risen) => {
            let latest = risen.latest.unwrap_or(risen.due);
            [risen.soonest, risen.due, latest]
        }
        Err(_) => [stated.time; 3],
    }
}

fn all_of(phases: &[Minutes]) -> Minutes {
    held(phases.iter().map(|phase| phase.minutes()).sum())
}

/// The phases of the programme, each so many times as long as the log has found bakes to take.
fn as_this_oven_bakes(phases: &[Minutes], learnt: &Learnt) -> Vec<Minutes> {
    let times = learnt
        .bake
        .as_ref()
        .map_or(1.0, |bake| bake.factor.number());
    let phases = phases.iter();
    phases.map(|phase| held(phase.minutes() * times)).collect()
}

/// The rises, and what they are scaled from.
fn rises_now(asked: &DayAsked) -> (Known, Option<(YeastActivity, YeastActivity)>, Rising) {
    let compared = doughs(asked).and_then(|doughs| {
        let times = doughs.map_or(Ok(Factor::ONE), |(now, then)| now.against(&then))?;
        Ok((doughs, times))
    });
    let (doughs, yeast_activity, tired) = match compared {
        Ok((doughs, times)) => (doughs, times, None),
        Err(error) => (None, Factor::ONE, Some(error)),
    };
    let known = known(asked, yeast_activity);
    let (formula, heat) = (&asked.sheet.formula, heat(asked));
    let mut rising = rising(formula, asked.kitchen, &heat, &rises(asked), &known);
    if let Some(error) = tired {
        rising.bulk = Err(error.clone());
        rising.proof = Err(error);
    }
    (known, doughs, rising)
}

/// What the formula asks of heat; a dough that is there is as warm as it really is.
pub(super) fn heat(asked: &DayAsked) -> HeatSettings {
    let mut heat = asked.sheet.heat.clone();
    if let Some(warm) = bake(asked).and_then(|bake| bake.noted.dough) {
        heat.dough = warm;
    }
    heat
}

fn bake<'a>(asked: &DayAsked<'a>) -> Option<&'a Bake> {
    asked.bench.map(|bench| &bench.bake)
}

/// Where this bake rises, where it was put elsewhere than usual.
pub(super) fn rises(asked: &DayAsked) -> RiseSettings {
    let mut rises = asked.settings.rises;
    if let Some(bench) = asked.bench {
        rises.bulk_place = bench.bulk_place.or(rises.bulk_place);
        rises.proof_place = bench.proof_place.or(rises.proof_place);
    }
    rises
}

/// What is in the dough, of the formula as it stands or as it was really weighed, and what was in
/// that of the known rises; nothing where nobody has noted that.
fn doughs(asked: &DayAsked) -> Result<Option<(YeastActivity, YeastActivity)>, RiseError> {
    let Some(then) = asked.settings.rises.dough else {
        return Ok(None);
    };
    let formula = asked.weighed.unwrap_or(&asked.sheet.formula);
    Ok(Some((yeast_activity(formula, Form::AsMade)?, then)))
}

/// What the formula says of its rises, as this kitchen has taught it.
fn known(asked: &DayAsked, yeast_activity: Factor) -> Known {
    let stated = Known::stated(&asked.settings.rises);
    let learnt = |factor: &Option<crate::engine::learn::LearntFactor>, anchor| {
        factor
            .as_ref()
            .map_or(anchor, |factor| factor.anchor(anchor))
    };
    Known {
        bulk: learnt(&asked.learnt.bulk, stated.bulk),
        proof: learnt(&asked.learnt.proof, stated.proof),
        yeast_activity,
    }
}

fn aim(asked: &DayAsked) -> Aim {
    match asked.settings.target {
        Target::Table(at) => Aim::Table(at.instant()),
        Target::From(at) => Aim::From(at.instant()),
        // A bake that has begun keeps the table it began with.
        Target::Open => {
            let began = bake(asked).map_or(asked.now, |bake| bake.began);
            Aim::Table(open_table(asked.zone, began))
        }
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
    let asleep = asked.settings.sleep.map_or_else(Vec::new, |sleep| {
        let (from, until) = (at.earlier(days), at.later(days));
        nights(asked.zone, (sleep.from, sleep.until), from, until)
    });
    Around {
        asleep,
        now: Some(asked.now.instant()),
        done: bake(asked).map_or_else(Vec::new, |bake| done(bake, plan)),
        one_pair_of_hands: asked.settings.one_pair_of_hands,
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
    pub fn lasts(&self, step: usize) -> Option<DurationRange> {
        self.plan.steps().get(step).map(|step| step.lasts)
    }
}
