//! What brings a dough to its temperature: each thing by itself, in numbers.

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

/// What could be done, as one action to take, with the dough it makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoughRemedy {
    /// What.
    pub step: DoughStep,
    /// What is done with it, where it alone is not enough.
    pub with: [Option<DoughStep>; DoughRemedy::MOST_MORE],
    /// Where the dough then comes off.
    pub reaches: Temperature,
    /// Whether that is the target, within two tenths of a degree.
    pub enough: bool,
}

/// The longest that cold things stand out, min: longer is a risk, and over-ferments.
pub(super) const STANDING_AT_MOST: f64 = 120.0;
/// What is stood longer by less than this is not worth a reminder, min.
const SHORTEST_STANDING: f64 = 1.0;
/// The warmest that milk, water, a bowl or flour is made beforehand, °C: yeast must not be scalded.
pub(super) const WARM_AT_MOST: Temperature = Temperature::known(40.0);
/// How near is near enough, K: what liquid, bowl or flour set to half a degree can miss, and less than
/// a thermometer in a dough tells. Common practice.
pub(super) const NEAR: f64 = 0.2;
const HALVINGS: u32 = 14; // to half a second of standing, thousandths of a degree

impl DoughRemedy {
    /// How many things at the most are done with the first.
    pub const MOST_MORE: usize = 4;

    /// Everything that is done.
    pub fn steps(&self) -> impl Iterator<Item = DoughStep> {
        std::iter::once(self.step).chain(self.with.into_iter().flatten())
    }

    pub(super) fn new(step: DoughStep, reaches: Temperature, target: Temperature) -> Self {
        Self {
            step,
            with: [None; Self::MOST_MORE],
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

pub(super) fn stand_out(
    dough: &Dough,
    target: Temperature,
    around: &Surroundings,
) -> Result<Option<DoughRemedy>, HeatError> {
    let stood = dough.stood.minutes();
    let longer = STANDING_AT_MOST - stood;
    if longer < SHORTEST_STANDING {
        return Ok(None);
    }
    let stay = Exposure {
        minutes: Minutes::from_minutes(longer)?,
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
        let time = Minutes::from_minutes(longer * share)?;
        let mut warmed = dough.clone();
        for (item, curve) in warmed.items.iter_mut().zip(&curves) {
            if let Some(warm) = curve.as_ref().and_then(|curve| curve.at(time, Probe::Mean)) {
                item.component.temperature = warm;
            }
        }
        comes_off(&warmed)
    };
    let (share, reaches) = least(target, after)?;
    let minutes = Minutes::from_minutes(stood + longer * share)?;
    Ok(Some(DoughRemedy::new(
        DoughStep::StandOut { minutes },
        reaches,
        target,
    )))
}

pub(super) fn mix_for(
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

pub(super) fn bowl_to(
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
    let after = |to: Temperature| -> Result<Temperature, HeatError> {
        let mut changed = dough.clone();
        changed.vessel = Some(super::Vessel {
            temperature: to,
            ..vessel
        });
        comes_off(&changed)
    };
    set_to(target, (vessel.temperature, end), after, step)
}

pub(super) fn flour_to(
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
    let after = |goes: Temperature| -> Result<Temperature, HeatError> {
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
    set_to(target, (starts, end), after, step)
}

/// All liquids that are colder than `end` warmed together, or those that are warmer chilled.
pub(super) fn liquid_to(
    dough: &Dough,
    target: Temperature,
    end: Temperature,
    too_cold: bool,
    step: fn(Temperature) -> DoughStep,
) -> Result<Option<DoughRemedy>, HeatError> {
    let is_liquid = |item: &&DoughItem| {
        matches!(item.handling, LiquidUse::Water | LiquidUse::Liquid)
            && item.component.mass > Mass::ZERO
    };
    let liquids = dough.items.iter().filter(is_liquid);
    let temperatures = liquids.map(|item| item.component.temperature);
    let Some(starts) = temperatures.reduce(|one, other| {
        if (one < other) == too_cold {
            one
        } else {
            other
        }
    }) else {
        return Ok(None);
    };
    if (end > starts) != too_cold {
        return Ok(None);
    }
    let after = |to: Temperature| comes_off(&poured(dough, to, too_cold));
    set_to(target, (starts, end), after, step)
}

/// The dough with every liquid that is colder than this warmed to it, or warmer chilled to it.
pub(super) fn poured(dough: &Dough, to: Temperature, warmed: bool) -> Dough {
    dough.with(|item| {
        let moves = (to > item.component.temperature) == warmed;
        if matches!(item.handling, LiquidUse::Water | LiquidUse::Liquid) && moves {
            item.component.temperature = to;
        }
    })
}

pub(super) fn ice(
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

/// The step that sets something between two temperatures to the half degree next to what brings the
/// dough to the target; the second of them where none does, and nothing where the first already does.
fn set_to(
    target: Temperature,
    (from, to): (Temperature, Temperature),
    after: impl Fn(Temperature) -> Result<Temperature, HeatError>,
    step: fn(Temperature) -> DoughStep,
) -> Result<Option<DoughRemedy>, HeatError> {
    let (share, _) = least(target, |share| after(towards(from, to, share)?))?;
    let half = towards(from, to, share)?.to_half_degree();
    let (least, most) = if from < to { (from, to) } else { (to, from) };
    let set = if half < least {
        least
    } else if half > most {
        most
    } else {
        half
    };
    Ok(if set == from {
        None
    } else {
        Some(DoughRemedy::new(step(set), after(set)?, target))
    })
}

/// `share` of the way from one temperature to another.
fn towards(from: Temperature, to: Temperature, share: f64) -> Result<Temperature, HeatError> {
    let celsius = from.celsius() + share * (to.celsius() - from.celsius());
    Ok(Temperature::from_celsius(celsius)?)
}
