//! Applying advice: the temperature of the liquid or the flour, a step that brings a dough to its
//! target.

use super::mixer_load::{LoadSource, MixerLoad};
use crate::engine::formula::{Formula, Line, LineAt, PartKind};
use crate::engine::heat::{DoughRemedy, DoughStep, HeatError, LiquidUse};
use crate::engine::ingredients::{Food, Role};
use crate::engine::quantity::{Mass, Minutes, Temperature};
use crate::sheet::HeatSettings;

/// Sets the temperature of all water and other liquids of the final dough, rounded to half a degree.
///
/// # Errors
/// [`HeatError::OffScale`] never.
pub fn set_liquid_temperature(formula: &mut Formula, liquid: Temperature) -> Result<(), HeatError> {
    let liquid = liquid.to_half_degree();
    for (_, line) in final_lines(formula) {
        if is_poured(line) {
            line.temperature = Some(liquid);
        }
    }
    Ok(())
}

/// Applies a step: longer standing or mixing, a warmer or colder liquid, bowl or flour, ice for some
/// of the water. `load` is the dough as it is mixed now.
///
/// # Errors
/// [`HeatError::OffScale`] when a time passes [`Minutes::RANGE`]; [`HeatError::NoLiquid`] for ice
/// in a dough without water, or without room for another line.
pub fn apply_step(
    formula: &mut Formula,
    settings: &mut HeatSettings,
    load: &MixerLoad,
    step: DoughStep,
) -> Result<(), HeatError> {
    let mixes = load.dough.minutes.minutes();
    match step {
        DoughStep::StandOut { minutes } => {
            let whole = libm::ceil(minutes.minutes().max(settings.standing.minutes()));
            settings.standing = Minutes::from_minutes(whole)?;
        }
        DoughStep::MixLonger { minutes } => {
            settings.mixing = Some(half_minute(mixes + minutes.minutes())?);
        }
        DoughStep::MixShorter { minutes } => {
            settings.mixing = Some(half_minute((mixes - minutes.minutes()).max(0.0))?);
        }
        DoughStep::WarmLiquid { to } => {
            let colder = move |at: Temperature| at < to;
            move_lines(formula, load, is_poured, (to.to_half_degree(), &colder));
        }
        DoughStep::ChillLiquid { to } => {
            let warmer = move |at: Temperature| at > to;
            move_lines(formula, load, is_poured, (to.to_half_degree(), &warmer));
        }
        DoughStep::WarmBowl { to } | DoughStep::ChillBowl { to } => {
            settings.mixing_bowl = Some(to.to_half_degree());
        }
        DoughStep::WarmFlour { to } => {
            let colder = move |at: Temperature| at < to;
            move_lines(formula, load, is_dry_flour, (to.to_half_degree(), &colder));
        }
        DoughStep::ChillFlour { to } => {
            let warmer = move |at: Temperature| at > to;
            move_lines(formula, load, is_dry_flour, (to.to_half_degree(), &warmer));
        }
        DoughStep::Ice { ice } => put_ice(formula, load, ice)?,
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
    load: &MixerLoad,
    remedy: &DoughRemedy,
) -> Result<(), HeatError> {
    remedy
        .steps()
        .try_for_each(|step| apply_step(formula, settings, load, step))
}

/// Returns the ice that a remedy asks for, which is weighed by itself; `None` where it asks for none.
#[must_use]
pub fn ice_of(remedy: &DoughRemedy) -> Option<DoughStep> {
    let is_ice = |step: &DoughStep| matches!(step, DoughStep::Ice { .. });
    remedy.steps().find(is_ice)
}

/// Sets the temperature of all flour of the final dough; `None` leaves it to the kitchen.
pub fn set_flour_temperature(formula: &mut Formula, flour: Option<Temperature>) {
    for (_, line) in final_lines(formula) {
        if is_dry_flour(line) {
            line.temperature = flour;
        }
    }
}

/// Returns the temperature of the first flour of a load in °C, before it is mixed; `None` for a load
/// without flour of its own.
#[must_use]
pub fn flour_starts_at(load: &MixerLoad) -> Option<Temperature> {
    let items = load.dough.items.iter().zip(&load.starts);
    let mut flours = items.filter(|(item, _)| item.handling == LiquidUse::Flour);
    flours.next().map(|(_, at)| *at)
}

/// Puts ice in for some of the plain water: of every line of water the share that is ice in the
/// load, so that a batch of any size gets as much.
fn put_ice(formula: &mut Formula, load: &MixerLoad, ice: Mass) -> Result<(), HeatError> {
    let items = load.dough.items.iter();
    let water = items.filter(|item| item.handling == LiquidUse::Water);
    let water: Mass = water.map(|item| item.component.mass).sum();
    if water <= Mass::ZERO {
        return Err(HeatError::NoLiquid);
    }
    let share = (ice.grams() / water.grams()).clamp(0.0, 1.0);
    let mut frozen = Line::new(Food::ice().map_err(|_| HeatError::NoLiquid)?, Mass::ZERO);
    let mut of = None;
    for (at, line) in final_lines(formula) {
        if is_plain_water(line) {
            freeze(line, &mut frozen, share)?;
            of = of.or(Some(at));
        }
    }
    let at = of.ok_or(HeatError::NoLiquid)?;
    let there = final_lines(formula).find(|(_, line)| line.food.is_ice());
    if let Some((_, line)) = there {
        return freeze(&mut frozen, line, 1.0);
    }
    let has_room = formula.has_room();
    let part = formula.parts.get_mut(at.part).filter(|_| has_room);
    let part = part.ok_or(HeatError::NoLiquid)?;
    let after = at.line.saturating_add(1).min(part.lines.len());
    part.lines.insert(after, frozen);
    Ok(())
}

/// Moves a share of one line to another, of what is written and of what was weighed.
fn freeze(from: &mut Line, to: &mut Line, share: f64) -> Result<(), HeatError> {
    let moved = |mass: Mass| Mass::from_grams(share * mass.grams());
    let sum = |one: Mass, other: Mass| Mass::from_grams(one.grams() + other.grams());
    if from.poured.is_some() || to.poured.is_some() {
        let poured = moved(from.poured.unwrap_or(from.mass))?;
        to.poured = Some(sum(to.poured.unwrap_or(to.mass), poured)?);
        from.poured = from.poured.map(|own| own.less(poured));
    }
    let mass = moved(from.mass)?;
    to.mass = sum(to.mass, mass)?;
    from.mass = from.mass.less(mass);
    Ok(())
}

/// The lines of the final dough, each with its place.
fn final_lines(formula: &mut Formula) -> impl Iterator<Item = (LineAt, &mut Line)> {
    let parts = formula.parts.iter_mut().enumerate();
    let finals = parts.filter(|(_, part)| part.kind == PartKind::Final);
    finals.flat_map(|(part, own)| {
        let lines = own.lines.iter_mut().enumerate();
        lines.map(move |(line, own)| (LineAt { part, line }, own))
    })
}

/// As the mixer's load takes a liquid: by its role, whatever it counts as.
fn is_poured(line: &Line) -> bool {
    !line.food.is_ice() && matches!(line.food.role(), Role::Water | Role::Liquid)
}

/// As the mixer's load takes flour.
fn is_dry_flour(line: &Line) -> bool {
    line.is_flour() && !matches!(line.food.role(), Role::Water | Role::Liquid)
}

fn is_plain_water(line: &Line) -> bool {
    !line.food.is_ice() && line.food.role() == Role::Water
}

/// Sets the temperature of those lines that move: the others are past it already.
fn move_lines(
    formula: &mut Formula,
    load: &MixerLoad,
    which: impl Fn(&Line) -> bool,
    (to, moves): (Temperature, &dyn Fn(Temperature) -> bool),
) {
    for (at, line) in final_lines(formula) {
        let now = line
            .temperature
            .or_else(|| load.starts_at(LoadSource::Line(at)));
        if which(line) && now.is_none_or(moves) {
            line.temperature = Some(to);
        }
    }
}

/// As a mixer is timed.
fn half_minute(minutes: f64) -> Result<Minutes, HeatError> {
    Ok(Minutes::from_minutes(libm::round(minutes * 2.0) / 2.0)?)
}
