//! Time to target: how long a measured paste or preferment must stay where it is, until it is
//! as warm as the plan has it.

use super::cooling::{CHILLED, CoolingPlan};
use super::cooling_result::paste_cooling;
use super::mixer_load::{LoadSource, mixer_load};
use super::part_matter::{part_at, part_matter};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{
    Air, Body, CoolingWay, Exposure, HeatError, LiquidUse, Pace, Probe, simulate_coarsely,
};
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::{HeatSettings, Kitchen};

/// What a measured temperature asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StillNeeds {
    /// As warm as it should be by the end of the step.
    pub wanted: Temperature,
    /// How long it must stay where it is; zero where it has reached its target.
    pub there: Minutes,
    /// How long in ice water instead, where something hot is to cool.
    pub in_ice: Option<Minutes>,
}

/// How long it is followed, min: a day.
const FOLLOWED: Minutes = Minutes::known(1440.0);

/// What a paste or preferment that is `measured` warm throughout still needs at a step: to be as
/// cool as the plan has it when it goes into the fridge, cold in the middle when it comes out, as
/// warm as the plan has it when it goes into the bowl.
///
/// # Errors
/// [`HeatError::NoTarget`] at a step where nothing is cooled or warmed; [`HeatError::NoPart`] for a
/// part that is not there; [`HeatError::NoPaste`] for a part without flour or liquid that should
/// cool as a paste; [`HeatError::NeverReached`] where a day is not enough.
pub fn time_to_target(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    (work, part): (StepKind, usize),
    measured: Temperature,
) -> Result<StillNeeds, HeatError> {
    if work == StepKind::CoolPaste {
        cooling(formula, kitchen, heat, part, measured)
    } else if matches!(work, StepKind::ChillPaste | StepKind::ChillPreferment) {
        chilling(formula, kitchen, heat, part, measured)
    } else if work == StepKind::WarmUp {
        warming_up(formula, kitchen, heat, part, measured)
    } else {
        Err(HeatError::NoTarget)
    }
}

/// Returns the parts that are measured at a step, by their place in the formula.
#[must_use]
pub fn measured_at(work: StepKind, of: u16, formula: &Formula) -> Vec<usize> {
    let cools = matches!(
        work,
        StepKind::Scald | StepKind::CoolPaste | StepKind::ChillPaste | StepKind::ChillPreferment
    );
    let parts = formula.parts.iter().enumerate();
    let found = parts.filter(|(place, own)| {
        let here = work == StepKind::WarmUp || (cools && *place == usize::from(of));
        here && matches!(own.kind, PartKind::Paste | PartKind::Preferment)
    });
    found.map(|(place, _)| place).collect()
}

fn cooling(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    part: usize,
    measured: Temperature,
) -> Result<StillNeeds, HeatError> {
    let plan = paste_cooling(formula, part, kitchen, heat)?;
    let planned = plan.likely()?.curve;
    let wanted = planned.at(plan.out()?, Probe::Mean).unwrap_or(measured);
    // As it is now, in the place it is in first.
    let now = plan.starting_at(measured);
    let reaches = |place: Standing| until_in_vessel(&now, place, (wanted, Probe::Mean));
    let first = if plan.way.bench > Minutes::ZERO || plan.way.ice == Minutes::ZERO {
        Standing::Bench
    } else {
        Standing::IceWater
    };
    let there = reaches(first)?;
    let in_ice = (first == Standing::Bench).then(|| reaches(Standing::IceWater).ok());
    Ok(StillNeeds {
        wanted,
        there,
        in_ice: in_ice.flatten().filter(|_| there > Minutes::ZERO),
    })
}

fn chilling(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    part: usize,
    measured: Temperature,
) -> Result<StillNeeds, HeatError> {
    let own = part_at(formula, part)?;
    // A fridge that is no colder than that can do no more than come near itself.
    let near = Temperature::from_celsius(kitchen.fridge.celsius() + 1.0)?;
    let wanted = CHILLED.max_of(near);
    let there = if own.kind == PartKind::Paste {
        // In the vessel it was put in when it was hot.
        let plan = paste_cooling(formula, part, kitchen, heat)?;
        let now = plan.starting_at(measured);
        until_in_vessel(&now, Standing::Fridge, (wanted, Probe::Centre))?
    } else {
        let (mass, matter) = part_matter(own)?;
        let body = Body::ball_of(&matter, mass, (measured, kitchen.fridge))?;
        let fridge = Air::of_kitchen(kitchen.fridge, &kitchen.cooling);
        until(&body, measured, fridge, (wanted, Probe::Centre))?
    };
    Ok(StillNeeds {
        wanted,
        there,
        in_ice: None,
    })
}

fn warming_up(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    part: usize,
    measured: Temperature,
) -> Result<StillNeeds, HeatError> {
    part_at(formula, part)?;
    let load = mixer_load(formula, kitchen, heat)?;
    // Fillings and toppings do not go into the mixer, nor does what weighs nothing.
    let item = load.item(LoadSource::Part(part));
    let item = item.ok_or(HeatError::NoTarget)?;
    let LiquidUse::Standing(body) = item.handling else {
        return Err(HeatError::NoTarget);
    };
    let wanted = item.component.temperature;
    Ok(StillNeeds {
        wanted,
        there: until(
            &body,
            measured,
            Air::of_kitchen(kitchen.room, &kitchen.cooling),
            (wanted, Probe::Mean),
        )?,
        in_ice: None,
    })
}

/// The surroundings of a paste.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Standing {
    Bench,
    IceWater,
    Fridge,
}

/// How long a paste in its vessel needs until it is so warm in one place.
fn until_in_vessel(
    plan: &CoolingPlan,
    place: Standing,
    (wanted, probe): (Temperature, Probe),
) -> Result<Minutes, HeatError> {
    let start = plan.cooling.start;
    if start <= wanted {
        return Ok(Minutes::ZERO);
    }
    let (bench, ice, around) = match place {
        Standing::Bench => (FOLLOWED, Minutes::ZERO, plan.cooling.room),
        Standing::IceWater => (Minutes::ZERO, FOLLOWED, Temperature::known(0.0)),
        Standing::Fridge => (Minutes::ZERO, Minutes::ZERO, plan.cooling.fridge),
    };
    let way = CoolingWay {
        bench,
        ice,
        ..plan.way
    };
    let course = plan.cooling.simulate(&way, Pace::Middle)?;
    course
        .curve
        .reaches(wanted, probe, Minutes::ZERO)
        .filter(|when| place == Standing::Fridge || *when <= FOLLOWED)
        .ok_or(HeatError::NeverReached {
            target: wanted,
            surroundings: around,
        })
}

/// How long until it is so warm there.
fn until(
    body: &Body,
    start: Temperature,
    air: Air,
    (wanted, place): (Temperature, Probe),
) -> Result<Minutes, HeatError> {
    let cools = air.temperature < wanted;
    if (cools && start <= wanted) || (!cools && start >= wanted) {
        return Ok(Minutes::ZERO);
    }
    let exposure = Exposure {
        minutes: FOLLOWED,
        air,
    };
    let course = simulate_coarsely(body, start, &[exposure])?;
    course
        .reaches(wanted, place, Minutes::ZERO)
        .ok_or(HeatError::NeverReached {
            target: wanted,
            surroundings: air.temperature,
        })
}
