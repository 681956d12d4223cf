//! The temperature at which each paste and preferment leaves the fridge, after what it went through.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::HeatError;
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
    coolings: &[PasteCooling],
) -> Vec<PartTemperatures> {
    let numbered = formula.parts.iter().enumerate();
    let followed = numbered.filter_map(|(part, own)| match own.kind {
        PartKind::Paste => {
            let followed = coolings.iter().find(|one| one.part == part)?;
            paste(followed, kitchen, rises).ok()
        }
        PartKind::Preferment => preferment(formula, part, kitchen, rises).ok(),
        PartKind::Final | PartKind::Filling | PartKind::Topping | PartKind::Wash => None,
    });
    followed.collect()
}

fn paste(
    followed: &PasteCooling,
    kitchen: &Kitchen,
    rises: &RiseSettings,
) -> Result<PartTemperatures, HeatError> {
    let [stood, chilled] = followed.temperatures_after(rises.fridge)?;
    Ok(PartTemperatures {
        part: followed.part,
        poured: Some(kitchen.boiling()?.temperature),
        made: followed.plan.cooling.start,
        stood,
        chilled,
        standing: followed.plan.out()?,
        chilling: rises.fridge,
    })
}

fn preferment(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    rises: &RiseSettings,
) -> Result<PartTemperatures, HeatError> {
    let made = kitchen.room;
    let ends = |stages: &[(Minutes, Temperature)]| -> Result<Temperature, HeatError> {
        let course = preferment_course(formula, part, kitchen, stages)?;
        Ok(course.end().map_or(made, |end| end.mean))
    };
    let bench = (rises.bench, kitchen.room);
    Ok(PartTemperatures {
        part,
        poured: None,
        made,
        stood: ends(&[bench])?,
        chilled: ends(&[bench, (rises.fridge, kitchen.fridge)])?,
        standing: rises.bench,
        chilling: rises.fridge,
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
