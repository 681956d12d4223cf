//! The temperature at which each paste and preferment leaves the fridge, after what it went through.

use super::plan_times::{PartTimes, PlanTimes};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{HeatError, Probe};
use crate::engine::quantity::{Minutes, Temperature};
use crate::engine::rise::RiseSettings;
use crate::results::day::preferment_course;
use crate::results::heat::PasteCooling;
use crate::sheet::Kitchen;

/// The temperatures of a paste or preferment from stage to stage, each the mean of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct PartTemperatures {
    /// The place of its part in the formula.
    pub(super) part: usize,
    /// The boiling liquid that is poured on; `None` for a preferment.
    pub(super) poured: Option<Temperature>,
    /// Just stirred or mixed.
    pub(super) made: Temperature,
    /// After standing on the bench, and in ice water.
    pub(super) stood: Temperature,
    /// After the fridge.
    pub(super) chilled: Temperature,
    /// How long it stood.
    pub(super) standing: Minutes,
    /// How long it was in the fridge.
    pub(super) chilling: Minutes,
}

/// The temperatures of every paste and preferment that can be followed.
pub(super) fn part_temperatures(
    formula: &Formula,
    kitchen: &Kitchen,
    rises: &RiseSettings,
    (coolings, planned): (&[PasteCooling], Option<&PlanTimes>),
) -> Vec<PartTemperatures> {
    let numbered = formula.parts.iter().enumerate();
    let followed = numbered.filter_map(|(part, own)| {
        let planned = planned.and_then(|planned| planned.part(part)).copied();
        match own.kind {
            PartKind::Paste => {
                let followed = coolings.iter().find(|one| one.part == part)?;
                paste(followed, kitchen, rises, planned).ok()
            }
            PartKind::Preferment => {
                let wished = PartTimes {
                    part,
                    standing: rises.bench,
                    chilling: rises.fridge,
                };
                preferment(formula, kitchen, planned.unwrap_or(wished)).ok()
            }
            PartKind::Final | PartKind::Filling | PartKind::Topping | PartKind::Wash => None,
        }
    });
    followed.collect()
}

fn paste(
    followed: &PasteCooling,
    kitchen: &Kitchen,
    rises: &RiseSettings,
    planned: Option<PartTimes>,
) -> Result<PartTemperatures, HeatError> {
    let wished = PartTimes {
        part: followed.part,
        standing: followed.plan.out()?,
        chilling: rises.fridge,
    };
    let times = planned.unwrap_or(wished);
    let [stood, chilled] = followed.temperatures_after(times.standing, times.chilling)?;
    Ok(PartTemperatures {
        part: followed.part,
        poured: Some(kitchen.boiling()?.temperature),
        made: followed.plan.cooling.start,
        stood,
        chilled,
        standing: times.standing,
        chilling: times.chilling,
    })
}

fn preferment(
    formula: &Formula,
    kitchen: &Kitchen,
    times: PartTimes,
) -> Result<PartTemperatures, HeatError> {
    let part = times.part;
    let made = kitchen.room;
    let stages = [
        (times.standing, kitchen.room),
        (times.chilling, kitchen.fridge),
    ];
    let course = preferment_course(formula, part, kitchen, &stages)?;
    let stood = course.at(times.standing, Probe::Mean).unwrap_or(made);
    Ok(PartTemperatures {
        part,
        poured: None,
        made,
        stood,
        chilled: course.end().map_or(stood, |end| end.mean),
        standing: times.standing,
        chilling: times.chilling,
    })
}

/// The formula with every paste and preferment at the temperature at which it leaves the fridge;
/// one whose temperature the user has set keeps that.
pub(super) fn chilled(formula: &Formula, temperatures: &[PartTemperatures]) -> Formula {
    let mut formula = formula.clone();
    for one in temperatures {
        if let Some(own) = formula.parts.get_mut(one.part)
            && own.temperature.is_none()
        {
            own.temperature = Some(one.chilled);
        }
    }
    formula
}

/// Temperatures that differ by less are one, K: no thermometer in a dough tells them apart. Common
/// practice.
const SAME: f64 = 0.02;

/// Whether two ways of following the same parts end in the same temperatures.
pub(super) fn agree(one: &[PartTemperatures], other: &[PartTemperatures]) -> bool {
    let same = |one: Temperature, other: Temperature| (one - other).kelvin().abs() < SAME;
    one.len() == other.len()
        && one.iter().zip(other).all(|(one, other)| {
            one.part == other.part
                && same(one.stood, other.stood)
                && same(one.chilled, other.chilled)
        })
}
