//! Applying advice: the temperature of the liquid, a step that brings a dough to its target.

use crate::engine::formula::{Formula, Line, PartKind};
use crate::engine::heat::{DoughRemedy, DoughStep, HeatError};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::HeatSettings;

/// Sets the temperature of all water and other liquids of the final dough, rounded to 0.1 °C.
///
/// # Errors
/// [`HeatError::OffScale`] never.
pub fn set_liquid_temperature(formula: &mut Formula, liquid: Temperature) -> Result<(), HeatError> {
    let liquid = tenth(liquid)?;
    // As the mixer's load takes a liquid: by its role, whatever it counts as.
    let is_liquid =
        |line: &Line| !line.food.is_ice() && matches!(line.food.role(), Role::Water | Role::Liquid);
    put(formula, is_liquid, liquid);
    Ok(())
}

/// Applies a step: longer standing or mixing, a warmer or colder bowl or flour. `mixes` is how long
/// the dough is mixed now. Ice is the baker's to weigh and changes nothing here.
///
/// # Errors
/// [`HeatError::OffScale`] when a time passes [`Minutes::RANGE`].
pub fn apply_step(
    formula: &mut Formula,
    settings: &mut HeatSettings,
    mixes: Minutes,
    step: DoughStep,
) -> Result<(), HeatError> {
    match step {
        DoughStep::StandOut { minutes } => {
            let whole = libm::ceil(settings.standing.minutes() + minutes.minutes());
            settings.standing = Minutes::from_minutes(whole)?;
        }
        DoughStep::MixLonger { minutes } => {
            settings.mixing = Some(half_minute(mixes.minutes() + minutes.minutes())?);
        }
        DoughStep::MixShorter { minutes } => {
            let left = (mixes.minutes() - minutes.minutes()).max(0.0);
            settings.mixing = Some(half_minute(left)?);
        }
        DoughStep::WarmLiquid { to } | DoughStep::ChillLiquid { to } => {
            set_liquid_temperature(formula, to)?;
        }
        DoughStep::WarmBowl { to } | DoughStep::ChillBowl { to } => {
            settings.mixing_bowl = Some(tenth(to)?);
        }
        DoughStep::WarmFlour { to } | DoughStep::ChillFlour { to } => {
            put(formula, Line::is_flour, tenth(to)?);
        }
        DoughStep::Ice { .. } => {}
    }
    Ok(())
}

/// The amount of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StepAmount {
    /// A time to add or take off.
    Time(Minutes),
    /// A temperature to reach beforehand.
    To(Temperature),
    /// A mass of ice.
    Ice(Mass),
}

/// Returns the amount of a step.
///
/// ```
/// use softcrumb::engine::heat::DoughStep;
/// use softcrumb::engine::quantity::Minutes;
/// use softcrumb::results::heat::{StepAmount, step_amount};
///
/// let minutes = Minutes::from_minutes(2.0)?;
/// assert_eq!(step_amount(DoughStep::MixLonger { minutes }), StepAmount::Time(minutes));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub const fn step_amount(step: DoughStep) -> StepAmount {
    match step {
        DoughStep::StandOut { minutes }
        | DoughStep::MixLonger { minutes }
        | DoughStep::MixShorter { minutes } => StepAmount::Time(minutes),
        DoughStep::WarmLiquid { to }
        | DoughStep::ChillLiquid { to }
        | DoughStep::WarmBowl { to }
        | DoughStep::WarmFlour { to }
        | DoughStep::ChillBowl { to }
        | DoughStep::ChillFlour { to } => StepAmount::To(to),
        DoughStep::Ice { ice } => StepAmount::Ice(ice),
    }
}

/// Applies everything that a remedy asks for, as [`apply_step`].
///
/// # Errors
/// Those of [`apply_step`].
pub fn apply_remedy(
    formula: &mut Formula,
    settings: &mut HeatSettings,
    mixes: Minutes,
    remedy: &DoughRemedy,
) -> Result<(), HeatError> {
    remedy
        .steps()
        .try_for_each(|step| apply_step(formula, settings, mixes, step))
}

/// Whether the page can apply a step; ice is the baker's to weigh.
pub(super) const fn applicable(step: DoughStep) -> bool {
    !matches!(step_amount(step), StepAmount::Ice(_))
}

fn put(formula: &mut Formula, which: impl Fn(&Line) -> bool, at: Temperature) {
    let finals = formula
        .parts
        .iter_mut()
        .filter(|part| part.kind == PartKind::Final);
    for line in finals.flat_map(|part| &mut part.lines) {
        if which(line) {
            line.temperature = Some(at);
        }
    }
}

/// As a thermometer can show it.
fn tenth(at: Temperature) -> Result<Temperature, HeatError> {
    let celsius = libm::round(at.celsius() * 10.0) / 10.0;
    Ok(Temperature::from_celsius(celsius)?)
}

/// As a mixer is timed.
fn half_minute(minutes: f64) -> Result<Minutes, HeatError> {
    Ok(Minutes::from_minutes(libm::round(minutes * 2.0) / 2.0)?)
}
