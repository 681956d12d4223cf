//! Advice for a cooling: the longest time on the bench, and what makes a slow one pass.

use super::cooling::{CooledRange, Cooling, CoolingWay};
use super::cooling_choice::{ChosenWay, by_fridge, by_ice, passing};
use super::cooling_vessel::{CoolingVessel, Laid};
use super::error::HeatError;
use crate::engine::numerics::try_first_true;
use crate::engine::quantity::{Length, Minutes};

/// What would have to be done.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingAdvice {
    /// The longest it may stay on the bench and still pass; `None` where what follows the bench is
    /// not fast enough even from the start.
    pub bench_at_most: Option<Minutes>,
    /// What makes it pass, each by itself, with the times it then takes.
    pub remedies: Vec<CoolingRemedy>,
}

/// One way that passes, with the cooling it then does.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingRemedy {
    /// The way.
    pub way: CoolingWay,
    /// How deep it then lies.
    pub deep: Length,
    /// How it then cools.
    pub cooled: CooledRange,
}

/// The longest time on the bench that is tried, min.
const LONGEST: f64 = 512.0;
/// Numbers of bowls tried: more are not at hand.
const BOWLS: [u16; 4] = [2, 3, 4, 6];

/// Finds how long it may stay on the bench, and what makes it pass where it does not.
///
/// Each is found by trying: some dozens of runs of the solver, so it is asked for after the frame.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when no vessel holds it.
pub fn advise(cooling: &Cooling, way: &CoolingWay) -> Result<CoolingAdvice, HeatError> {
    let fails = |minutes: f64| -> Result<bool, HeatError> {
        let bench = Minutes::from_minutes(minutes)?;
        Ok(!cooling.passes_coarsely(&CoolingWay { bench, ..*way })?)
    };
    // Nine halvings of 512 minutes end at whole minutes.
    let first_failing = try_first_true(0.0..=LONGEST, 9, fails)?.unwrap_or(LONGEST);
    let bench_at_most = if first_failing > 0.0 {
        Some(Minutes::from_minutes(first_failing - 1.0)?)
    } else {
        None
    };
    let remedies = if cooling.cool(way)?.slow.passes {
        Vec::new()
    } else {
        remedies(cooling, way)?
    };
    Ok(CoolingAdvice {
        bench_at_most,
        remedies,
    })
}

/// Those that pass, the gentlest form of each, the one that is cold first first.
///
/// Bags in ice water are more work than any other, and are named only where nothing else is.
fn remedies(cooling: &Cooling, way: &CoolingWay) -> Result<Vec<CoolingRemedy>, HeatError> {
    let mut ways = Vec::with_capacity(4);
    ways.extend(by_ice(cooling, (CoolingVessel::Bowl, width_of_bowl(way)))?);
    ways.extend(smaller_bowls(cooling)?);
    let dish = by_fridge(cooling, (CoolingVessel::Dish, None))?;
    let spread = dish.map_or_else(
        || by_fridge(cooling, (CoolingVessel::Tray, None)),
        |chosen| Ok(Some(chosen)),
    );
    ways.extend(spread?);
    if ways.is_empty() {
        ways.extend(by_ice(cooling, (CoolingVessel::Bag, None))?);
    }
    let mut found = Vec::with_capacity(ways.len());
    for ChosenWay { way, slow, .. } in ways {
        found.push(CoolingRemedy {
            way,
            deep: cooling.filling(&way)?.deep,
            cooled: cooling.cool_with_slow(&way, slow)?,
        });
    }
    let cold = |one: &CoolingRemedy| one.cooled.slow.cold().map_or(f64::MAX, Minutes::minutes);
    found.sort_by(|one, other| cold(one).total_cmp(&cold(other)));
    Ok(found)
}

fn width_of_bowl(way: &CoolingWay) -> Option<Length> {
    (way.vessel == CoolingVessel::Bowl && way.laid.count == 1).then_some(way.laid.across)
}

/// Shared out between bowls of the usual width, straight into the fridge.
fn smaller_bowls(cooling: &Cooling) -> Result<Option<ChosenWay>, HeatError> {
    for count in BOWLS {
        let way = CoolingWay {
            vessel: CoolingVessel::Bowl,
            laid: Laid {
                across: CoolingVessel::Bowl.usual_across(),
                count,
            },
            bench: Minutes::ZERO,
            ice: Minutes::ZERO,
        };
        if let Some(chosen) = passing(cooling, way)? {
            return Ok(Some(chosen));
        }
    }
    Ok(None)
}
