//! The quickest practical way of cooling that meets the rules.

use super::cooled::judge;
use super::cooling::{Cooling, CoolingWay};
use super::cooling_factors::Pace;
use super::cooling_vessel::CoolingVessel;
use super::error::HeatError;
use super::vessel_cooling::VesselCourse;
use crate::engine::quantity::{Length, Minutes};

/// A way that was chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct ChosenWay {
    /// The way.
    pub way: CoolingWay,
    /// Whether it meets the rules at the slow end.
    pub passes: bool,
    /// The simulation at the slow end that it was chosen by.
    pub slow: VesselCourse,
}

/// Times tried on the bench before the fridge, min, longest first: steam goes off, and little is
/// warmed in the fridge. Common practice.
const BENCH_MINUTES: [f64; 2] = [20.0, 0.0];
/// Times tried in ice water, min.
const ICE_MINUTES: [f64; 8] = [10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 90.0, 120.0];
/// The most trays, and the most other vessels that are advised: what a fridge of the house has room
/// for. Common practice.
const MOST_TRAYS: u16 = 4;
const MOST_OTHERS: u16 = 8;

/// The least work that meets the rules, tried in this order: in its own vessel and then the fridge;
/// spread in a wide dish, then the fridge; spread on trays, then the fridge; in its bowl in ice
/// water, then the fridge; flat in bags in ice water, then the fridge. Where none does, the last
/// that fits.
///
/// Each is tried on a coarse grid and confirmed on the fine one.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when no vessel holds it.
pub fn quickest(
    cooling: &Cooling,
    (vessel, across): (CoolingVessel, Option<Length>),
) -> Result<ChosenWay, HeatError> {
    let spread = [CoolingVessel::Dish, CoolingVessel::Tray];
    let in_fridge = [(vessel, across)]
        .into_iter()
        .chain(spread.map(|vessel| (vessel, None)));
    for place in in_fridge {
        if let Some(chosen) = by_fridge(cooling, place)? {
            return Ok(chosen);
        }
    }
    let own = if takes_ice_water(vessel) {
        (vessel, across)
    } else {
        (CoolingVessel::Bowl, None)
    };
    for place in [own, (CoolingVessel::Bag, None)] {
        if let Some(chosen) = by_ice(cooling, place)? {
            return Ok(chosen);
        }
    }
    let longest = (Minutes::ZERO, Minutes::known(120.0));
    let way = cooling.way(CoolingVessel::Bag, None, longest)?;
    Ok(ChosenWay {
        way,
        passes: false,
        slow: cooling.simulate(&way, Pace::Slow)?,
    })
}

/// Whether it can stand in ice water.
const fn takes_ice_water(vessel: CoolingVessel) -> bool {
    match vessel {
        CoolingVessel::Bowl | CoolingVessel::Jar | CoolingVessel::Bag => true,
        CoolingVessel::Dish | CoolingVessel::Tray => false,
    }
}

/// The longest time on the bench with which it passes in this vessel; `None` where none does.
pub(super) fn by_fridge(
    cooling: &Cooling,
    (vessel, across): (CoolingVessel, Option<Length>),
) -> Result<Option<ChosenWay>, HeatError> {
    for bench in BENCH_MINUTES {
        let times = (Minutes::from_minutes(bench)?, Minutes::ZERO);
        let way = cooling.way(vessel, across, times)?;
        if let Some(chosen) = passing(cooling, way)? {
            return Ok(Some(chosen));
        }
    }
    Ok(None)
}

/// The shortest time in ice water with which it passes in this vessel; `None` where none does.
pub(super) fn by_ice(
    cooling: &Cooling,
    (vessel, across): (CoolingVessel, Option<Length>),
) -> Result<Option<ChosenWay>, HeatError> {
    for ice in ICE_MINUTES {
        let times = (Minutes::ZERO, Minutes::from_minutes(ice)?);
        let way = cooling.way(vessel, across, times)?;
        if let Some(chosen) = passing(cooling, way)? {
            return Ok(Some(chosen));
        }
    }
    Ok(None)
}

/// A way, where it meets the rules at the slow end and has room in a kitchen.
pub(super) fn passing(cooling: &Cooling, way: CoolingWay) -> Result<Option<ChosenWay>, HeatError> {
    let most = if way.vessel == CoolingVessel::Tray {
        MOST_TRAYS
    } else {
        MOST_OTHERS
    };
    if way.laid.count > most || !cooling.passes_coarsely(&way)? {
        return Ok(None);
    }
    let slow = cooling.simulate(&way, Pace::Slow)?;
    let passes = judge(slow.curve.clone(), cooling.rules).passes;
    Ok(passes.then_some(ChosenWay { way, passes, slow }))
}
