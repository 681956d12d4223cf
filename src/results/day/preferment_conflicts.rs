//! Preferments that are not ripe when they leave the fridge, and what makes them ripe by then.

use super::input::DayInput;
use super::preferment::{PrefermentRise, alone, preferment_course};
use crate::engine::formula::{Form, Formula};
use crate::engine::quantity::{Factor, Minutes, Share};
use crate::engine::rise::{RipenessState, YeastActivity, ripeness, yeast_activity};
use crate::results::run::Run;

/// A preferment that is not ripe yet when the plan takes it out of the fridge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrefermentConflict {
    /// The place of its part in the formula.
    pub part: usize,
    /// How long it stands in the room before the fridge to be ripe; `None` where four hours are not
    /// enough.
    pub stand: Option<Minutes>,
    /// So many times its yeast makes it ripe; `None` where three times are not enough.
    pub yeast: Option<Factor>,
}

/// Times in the room are advised in these steps, min, and at most so many of them.
const STEP: f64 = 15.0;
const MOST_STEPS: u8 = 16;
/// The most yeast that is advised, in tenths of what it has.
const MOST_TENTHS: u8 = 30;

/// The preferments of a run that are not ripe in time.
#[must_use]
pub(super) fn preferment_conflicts(input: &DayInput, run: &Run) -> Vec<PrefermentConflict> {
    let rises = run.rises.preferments.iter().flatten();
    let under = rises.filter(|rise| {
        let found = rise.ripeness.as_ref();
        found.is_ok_and(|found| found.state == RipenessState::Under)
    });
    let found = under.filter_map(|rise| {
        let activity = run.formula.parts.get(rise.part)?;
        let activity = yeast_activity(&alone(activity), Form::AsMade).ok()?;
        Some(PrefermentConflict {
            part: rise.part,
            stand: stand(input, &run.formula, rise, &activity),
            yeast: yeast(rise, &activity),
        })
    });
    found.collect()
}

/// The least time in the room, in quarters of an hour, after which it is ripe from the same fridge.
fn stand(
    input: &DayInput,
    formula: &Formula,
    rise: &PrefermentRise,
    activity: &YeastActivity,
) -> Option<Minutes> {
    let kitchen = input.taught_kitchen();
    let now = input.rise_settings().bench.minutes();
    let fridge = Minutes::from_minutes((rise.in_all().minutes() - now).max(0.0)).ok()?;
    let is_under = |bench: &Minutes| {
        let stages = [(*bench, kitchen.room), (fridge, kitchen.fridge)];
        let course = preferment_course(formula, rise.part, &kitchen, &stages);
        let end = Minutes::from_minutes(bench.minutes() + fridge.minutes());
        let found = course.ok().zip(end.ok());
        let found = found.and_then(|(course, end)| ripeness(&course, activity, end).ok());
        found.is_none_or(|found| found.state == RipenessState::Under)
    };
    let steps = (1..=MOST_STEPS).map(|step| f64::from(step) * STEP);
    let longer = steps.filter(|minutes| *minutes > now);
    let longer: Vec<Minutes> = longer
        .filter_map(|minutes| Minutes::from_minutes(minutes).ok())
        .collect();
    longer.get(longer.partition_point(is_under)).copied()
}

/// The least yeast, in tenths of what it has, with which it is ripe after the same times.
fn yeast(rise: &PrefermentRise, activity: &YeastActivity) -> Option<Factor> {
    let needed = rise.ripeness.as_ref().ok()?.activity_to_be_ripe()?;
    let mut tenths = (11..=MOST_TENTHS).map(|tenths| f64::from(tenths) / 10.0);
    let times = tenths.find(|times| {
        let more = Share::from_fraction(activity.yeast.fraction() * times);
        let more = more.ok().and_then(|yeast| {
            let (sugar, salt) = (activity.sugar, activity.salt);
            YeastActivity::of(yeast, sugar, salt).ok()
        });
        more.and_then(|more| more.against(activity).ok())
            .is_some_and(|gained| gained >= needed)
    })?;
    Factor::from_number(times).ok()
}
