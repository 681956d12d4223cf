//! What else brings a dough to its temperature, where no liquid can: each by itself, in numbers.

use super::body::Air;
use super::conduction::{Curve, Exposure, Probe, simulate};
use super::development::Development;
use super::dough::{Dough, DoughItem, LiquidUse, comes_off};
use super::dough_step::DoughStep;
use super::error::HeatError;
use super::ice_share::ice_for;
use super::surroundings::Surroundings;
use crate::engine::numerics::try_first_true;
use crate::engine::quantity::{Mass, Minutes, Temperature};

/// One thing that could be done, with the dough it makes when the liquid is at its best.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoughRemedy {
    /// What.
    pub step: DoughStep,
    /// Where the dough then comes off.
    pub reaches: Temperature,
    /// Whether that is the target, within a tenth of a degree.
    pub enough: bool,
}

/// The longest that cold things stand out, min: longer is a risk, and over-ferments.
const STANDING_AT_MOST: f64 = 120.0;
/// What changes the dough by less than this, and is not enough, is not worth the trouble, K.
const SLIGHT: f64 = 0.5;
/// The warmest a bowl or flour is made beforehand, °C: yeast must not be scalded.
const WARM_AT_MOST: Temperature = Temperature::known(40.0);
/// How near is near enough, K.
const NEAR: f64 = 0.1;
const HALVINGS: u32 = 14; // to half a second of standing, thousandths of a degree

/// What would bring a dough there, its liquid left as it is: what is enough by itself first, and
/// then what a baker would do first; nothing where it is there, to a tenth of a degree. What changes
/// the dough by less than half a degree without being enough is named only where nothing else helps.
///
/// # Errors
/// Those of [`super::dough_temperature`].
pub fn dough_remedies(
    at_best: &Dough,
    target: Temperature,
    around: &Surroundings,
) -> Result<Vec<DoughRemedy>, HeatError> {
    let now = comes_off(at_best)?;
    let lacks = (target - now).kelvin();
    if lacks.abs() <= NEAR {
        return Ok(Vec::new());
    }
    // In the order a baker would do them: what is put in, then the bowl, time, and mixing last.
    let mut found = Vec::with_capacity(4);
    let too_cold = lacks > 0.0;
    if too_cold {
        found.extend(flour_to(at_best, target, WARM_AT_MOST, true, |to| {
            DoughStep::WarmFlour { to }
        })?);
        found.extend(bowl_to(at_best, target, WARM_AT_MOST, true, |to| {
            DoughStep::WarmBowl { to }
        })?);
        found.extend(stand_out(at_best, target, around)?);
    } else {
        found.extend(ice(at_best, target, around)?);
        found.extend(flour_to(at_best, target, around.fridge, false, |to| {
            DoughStep::ChillFlour { to }
        })?);
        found.extend(bowl_to(at_best, target, around.fridge, false, |to| {
            DoughStep::ChillBowl { to }
        })?);
    }
    found.extend(mix_for(at_best, target, too_cold)?);
    let worth =
        |remedy: &DoughRemedy| remedy.enough || (remedy.reaches - now).kelvin().abs() >= SLIGHT;
    if found.iter().any(worth) {
        found.retain(worth);
    }
    // Stable: of two that are enough, the one a baker would do first stays first.
    found.sort_by_key(|remedy| !remedy.enough);
    Ok(found)
}

impl DoughRemedy {
    fn new(step: DoughStep, reaches: Temperature, target: Temperature) -> Self {
        Self {
            step,
            reaches,
            enough: (target - reaches).kelvin().abs() <= NEAR,
        }
    }
}

/// The least of 0 to 1 for which `reaches` comes to `target`, 1 where none does. `reaches` must go
/// one way only.
fn least(
    target: Temperature,
    reaches: impl Fn(f64) -> Result<Temperature, HeatError>,
) -> Result<(f64, Temperature), HeatError> {
    let (start, end) = (reaches(0.0)?, reaches(1.0)?);
    let warming = end > start;
    let passed = |t: Temperature| if warming { t >= target } else { t <= target };
    let found = try_first_true(0.0..=1.0, HALVINGS, |share| reaches(share).map(passed))?;
    match found {
        Some(share) => Ok((share, reaches(share)?)),
        None => Ok((1.0, end)),
    }
}

fn stand_out(
    dough: &Dough,
    target: Temperature,
    around: &Surroundings,
) -> Result<Option<DoughRemedy>, HeatError> {
    let stay = Exposure {
        minutes: Minutes::from_minutes(STANDING_AT_MOST)?,
        air: Air::still(around.room),
    };
    let mut curves: Vec<Option<Curve>> = Vec::with_capacity(dough.items.len());
    for item in &dough.items {
        let mut curve = None;
        if let LiquidUse::Standing(body) = item.handling
            && item.component.temperature < around.room
        {
            curve = Some(simulate(&body, item.component.temperature, &[stay])?);
        }
        curves.push(curve);
    }
    if curves.iter().all(Option::is_none) {
        return Ok(None);
    }
    let after = |share: f64| -> Result<Temperature, HeatError> {
        let time = Minutes::from_minutes(STANDING_AT_MOST * share)?;
        let mut stood = dough.clone();
        for (item, curve) in stood.items.iter_mut().zip(&curves) {
            if let Some(warm) = curve.as_ref().and_then(|curve| curve.at(time, Probe::Mean)) {
                item.component.temperature = warm;
            }
        }
        comes_off(&stood)
    };
    let (share, reaches) = least(target, after)?;
    let minutes = Minutes::from_minutes(STANDING_AT_MOST * share)?;
    Ok(Some(DoughRemedy::new(
        DoughStep::StandOut { minutes },
        reaches,
        target,
    )))
}

fn mix_for(
    dough: &Dough,
    target: Temperature,
    too_cold: bool,
) -> Result<Option<DoughRemedy>, HeatError> {
    let now = dough.minutes.minutes();
    let end = if too_cold {
        Development::longest(dough.usual).minutes().max(now)
    } else {
        Development::shortest(dough.usual).minutes().min(now)
    };
    let mixed_for = |minutes: f64| -> Result<Temperature, HeatError> {
        comes_off(&Dough {
            minutes: Minutes::from_minutes(minutes)?,
            ..dough.clone()
        })
    };
    let (share, _) = least(target, |share| mixed_for(now + share * (end - now)))?;
    // No baker times a mixer finer than half a minute, and none goes past the end.
    let most = libm::floor(2.0 * (end - now).abs()) / 2.0;
    let change = (libm::round(2.0 * share * (end - now).abs()) / 2.0).min(most);
    let minutes = Minutes::from_minutes(change)?;
    if minutes <= Minutes::ZERO {
        return Ok(None);
    }
    let (step, reaches) = if too_cold {
        (DoughStep::MixLonger { minutes }, mixed_for(now + change)?)
    } else {
        (DoughStep::MixShorter { minutes }, mixed_for(now - change)?)
    };
    let gains = (reaches > mixed_for(now)?) == too_cold;
    Ok(gains.then(|| DoughRemedy::new(step, reaches, target)))
}

fn bowl_to(
    dough: &Dough,
    target: Temperature,
    end: Temperature,
    too_cold: bool,
    step: fn(Temperature) -> DoughStep,
) -> Result<Option<DoughRemedy>, HeatError> {
    let Some(vessel) = dough.vessel.filter(|vessel| {
        vessel.component().mass > Mass::ZERO && (end > vessel.temperature) == too_cold
    }) else {
        return Ok(None);
    };
    let to = |share: f64| towards(vessel.temperature, end, share);
    let after = |share: f64| -> Result<Temperature, HeatError> {
        let mut changed = dough.clone();
        changed.vessel = Some(super::Vessel {
            temperature: to(share)?,
            ..vessel
        });
        comes_off(&changed)
    };
    let (share, reaches) = least(target, after)?;
    Ok(Some(DoughRemedy::new(step(to(share)?), reaches, target)))
}

fn flour_to(
    dough: &Dough,
    target: Temperature,
    end: Temperature,
    too_cold: bool,
    step: fn(Temperature) -> DoughStep,
) -> Result<Option<DoughRemedy>, HeatError> {
    let flour =
        |item: &&DoughItem| item.handling == LiquidUse::Flour && item.component.mass > Mass::ZERO;
    let flours = dough.items.iter().filter(flour);
    // The flour that is farthest from the end is the first to move; the others join it on the way.
    let far = |t: &Temperature| (end - *t).kelvin().abs();
    let Some(starts) = flours
        .map(|item| item.component.temperature)
        .filter(|t| (end > *t) == too_cold)
        .max_by(|one, other| far(one).total_cmp(&far(other)))
    else {
        return Ok(None);
    };
    let to = |share: f64| towards(starts, end, share);
    let after = |share: f64| -> Result<Temperature, HeatError> {
        let goes = to(share)?;
        let changed = dough.with(|item| {
            let moves = if end > starts {
                item.component.temperature < goes
            } else {
                item.component.temperature > goes
            };
            if item.handling == LiquidUse::Flour && moves {
                item.component.temperature = goes;
            }
        });
        comes_off(&changed)
    };
    let (share, reaches) = least(target, after)?;
    Ok(Some(DoughRemedy::new(step(to(share)?), reaches, target)))
}

fn ice(
    dough: &Dough,
    target: Temperature,
    around: &Surroundings,
) -> Result<Option<DoughRemedy>, HeatError> {
    match ice_for(dough, target, around.freezer) {
        Ok(answer) => {
            let step = DoughStep::Ice { ice: answer.ice };
            Ok(Some(DoughRemedy::new(step, answer.temperature, target)))
        }
        Err(HeatError::NoLiquid) => Ok(None),
        Err(other) => Err(other),
    }
}

/// `share` of the way from one temperature to another.
fn towards(from: Temperature, to: Temperature, share: f64) -> Result<Temperature, HeatError> {
    let celsius = from.celsius() + share * (to.celsius() - from.celsius());
    Ok(Temperature::from_celsius(celsius)?)
}
