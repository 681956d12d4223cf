//! What makes a hot food cool fast enough: thinner, in ice water, in smaller bowls.

use super::body::{Air, Body, Shape};
use super::conduction::Stay;
use super::cooling::{Cooled, Cooling, cool_through};
use super::error::HeatError;
use crate::engine::quantity::{Length, Minutes};

/// One thing that makes it pass, by itself, with the cooling it then does.
#[derive(Clone, Debug, PartialEq)]
pub enum CoolingRemedy {
    /// Spread it flat, this thick at most, and put it in the fridge at once.
    Spread {
        /// Its whole thickness, cooled from both sides.
        thick: Length,
        /// How it then cools.
        cooled: Cooled,
    },
    /// Stand it in ice water first, then in the fridge.
    IceBath {
        /// How long in ice water.
        minutes: Minutes,
        /// How it then cools.
        cooled: Cooled,
    },
    /// Share it out between bowls of the same shape, straight into the fridge.
    SmallerBowls {
        /// Between how many.
        bowls: u8,
        /// How each then cools.
        cooled: Cooled,
    },
}

/// Thicknesses tried for spreading, m: what can be spread by hand, thickest first.
const THICKNESSES: [f64; 9] = [0.05, 0.04, 0.03, 0.025, 0.02, 0.015, 0.01, 0.0075, 0.005];
/// Times tried in ice water, min.
const ICE_MINUTES: [f64; 9] = [10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 120.0];
/// Numbers of bowls tried.
const BOWLS: [u8; 6] = [2, 3, 4, 6, 8, 12];

/// Those of the three that pass, the gentlest form of each.
pub(super) fn remedies(cooling: &Cooling) -> Result<Vec<CoolingRemedy>, HeatError> {
    let mut found = Vec::with_capacity(3);
    found.extend(spread(cooling)?);
    found.extend(ice_bath(cooling)?);
    found.extend(smaller_bowls(cooling)?);
    Ok(found)
}

fn in_fridge(cooling: &Cooling, body: &Body) -> Result<Cooled, HeatError> {
    let fridge = Stay {
        minutes: Minutes::from_minutes(720.0)?,
        air: cooling.fridge,
    };
    cool_through(body, cooling.start, &[fridge], cooling.rules)
}

fn spread(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    for metres in THICKNESSES {
        let half = Length::from_metres(metres / 2.0)?;
        let body = Body {
            shape: Shape::Slab,
            half,
            ..cooling.body
        };
        let cooled = in_fridge(cooling, &body)?;
        if cooled.passes {
            let thick = Length::from_metres(metres)?;
            return Ok(Some(CoolingRemedy::Spread { thick, cooled }));
        }
    }
    Ok(None)
}

fn ice_bath(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    for minutes in ICE_MINUTES {
        let minutes = Minutes::from_minutes(minutes)?;
        let stays = [
            Stay {
                minutes,
                air: Air::ice_bath(),
            },
            Stay {
                minutes: Minutes::from_minutes(720.0)?,
                air: cooling.fridge,
            },
        ];
        let cooled = cool_through(&cooling.body, cooling.start, &stays, cooling.rules)?;
        if cooled.passes {
            return Ok(Some(CoolingRemedy::IceBath { minutes, cooled }));
        }
    }
    Ok(None)
}

fn smaller_bowls(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    for bowls in BOWLS {
        let body = cooling.body.shared_out(bowls)?;
        let cooled = in_fridge(cooling, &body)?;
        if cooled.passes {
            return Ok(Some(CoolingRemedy::SmallerBowls { bowls, cooled }));
        }
    }
    Ok(None)
}
