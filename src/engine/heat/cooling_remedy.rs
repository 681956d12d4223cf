//! What makes a hot food cool fast enough: in ice water, in smaller bowls, spread on trays.

use super::body::{Air, Body, Shape};
use super::conduction::Exposure;
use super::cooling::{Cooled, Cooling, IN_FRIDGE, cool_through};
use super::error::HeatError;
use crate::engine::numerics::whole;
use crate::engine::quantity::{Length, Minutes};

/// One thing that makes it pass, by itself, with the cooling it then does.
#[derive(Clone, Debug, PartialEq)]
pub enum CoolingRemedy {
    /// Spread it flat on trays, this thick at most, and put it in the fridge at once.
    Spread {
        /// How it lies.
        laid: Laid,
        /// How it then cools.
        cooled: Cooled,
    },
    /// `DoughHeight` it in ice water first, then in the fridge.
    IceBath {
        /// How long in ice water.
        minutes: Minutes,
        /// How it then cools.
        cooled: Cooled,
    },
    /// Spread it flat in closed bags, lay them in ice water, then in the fridge.
    FlatInIce {
        /// Its whole thickness, cooled from both sides.
        thick: Length,
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

/// A food spread on trays.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Laid {
    /// Its whole thickness, cooled from both sides.
    pub thick: Length,
    /// How many trays it takes.
    pub trays: u16,
    /// How long it lies on each.
    pub long: Length,
    /// How wide it lies on each.
    pub wide: Length,
}

/// An oven tray, m along and across: the usual size between a small and a large one. Common practice.
const TRAY: (Length, Length) = (Length::known(0.40), Length::known(0.30));

/// Thicknesses tried for spreading, m: what can be spread by hand, thickest first. Thinner than a
/// centimetre a paste tears and dries.
const THICKNESSES: [f64; 7] = [0.05, 0.04, 0.03, 0.025, 0.02, 0.015, 0.01];
/// How thick it lies in a bag, m.
const IN_BAG: Length = Length::known(0.02);
/// The most trays that are advised: what a fridge of the house has room for. Common practice.
const MOST_TRAYS: u16 = 4;
/// Times tried in ice water, min.
const ICE_MINUTES: [f64; 9] = [10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 120.0];
/// Numbers of bowls tried: more are not at hand.
const BOWLS: [u8; 4] = [2, 3, 4, 6];

/// Those that pass, the gentlest form of each, the one that is cold first first.
///
/// Bags in ice water are more work than any other, and are named only where nothing else is.
pub(super) fn remedies(cooling: &Cooling) -> Result<Vec<CoolingRemedy>, HeatError> {
    let mut found = Vec::with_capacity(3);
    found.extend(ice_bath(cooling)?);
    found.extend(smaller_bowls(cooling)?);
    found.extend(spread(cooling)?);
    if found.is_empty() {
        found.extend(flat_in_ice(cooling)?);
    }
    let cold = |one: &CoolingRemedy| one.cooled().cold().map_or(f64::MAX, Minutes::minutes);
    found.sort_by(|one, other| cold(one).total_cmp(&cold(other)));
    Ok(found)
}

impl CoolingRemedy {
    /// How it then cools.
    #[must_use]
    pub const fn cooled(&self) -> &Cooled {
        match self {
            Self::Spread { cooled, .. }
            | Self::IceBath { cooled, .. }
            | Self::FlatInIce { cooled, .. }
            | Self::SmallerBowls { cooled, .. } => cooled,
        }
    }
}

fn in_fridge(cooling: &Cooling, body: &Body) -> Result<Cooled, HeatError> {
    let fridge = Exposure {
        minutes: IN_FRIDGE,
        air: cooling.fridge,
    };
    cool_through(body, cooling.start, &[fridge], cooling.rules)
}

fn flat(body: &Body, thick: Length) -> Result<Body, HeatError> {
    Ok(Body {
        shape: Shape::Slab,
        half: Length::from_metres(thick.metres() / 2.0)?,
        ..*body
    })
}

fn spread(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    for metres in THICKNESSES {
        let thick = Length::from_metres(metres)?;
        let body = flat(&cooling.body, thick)?;
        let cooled = in_fridge(cooling, &body)?;
        if cooled.passes {
            let laid = on_trays(&body, thick)?;
            return Ok(laid.map(|laid| CoolingRemedy::Spread { laid, cooled }));
        }
    }
    Ok(None)
}

/// How it lies on trays, as square as may be; `None` where they would be too many.
fn on_trays(body: &Body, thick: Length) -> Result<Option<Laid>, HeatError> {
    let (length, width) = (TRAY.0.metres(), TRAY.1.metres());
    let area = body.volume() / thick.metres();
    let trays = whole(libm::ceil(area / (length * width))).max(1);
    let Some(trays) = u16::try_from(trays)
        .ok()
        .filter(|&trays| trays <= MOST_TRAYS)
    else {
        return Ok(None);
    };
    let each = area / f64::from(trays);
    let wide = libm::sqrt(each).min(width);
    Ok(Some(Laid {
        thick,
        trays,
        long: Length::from_metres(each / wide)?,
        wide: Length::from_metres(wide)?,
    }))
}

fn ice_bath(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    let passing = in_ice(cooling, &cooling.body)?;
    Ok(passing.map(|(minutes, cooled)| CoolingRemedy::IceBath { minutes, cooled }))
}

fn flat_in_ice(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    let passing = in_ice(cooling, &flat(&cooling.body, IN_BAG)?)?;
    Ok(passing.map(|(minutes, cooled)| CoolingRemedy::FlatInIce {
        thick: IN_BAG,
        minutes,
        cooled,
    }))
}

/// The shortest time in ice water with which a body passes.
fn in_ice(cooling: &Cooling, body: &Body) -> Result<Option<(Minutes, Cooled)>, HeatError> {
    for minutes in ICE_MINUTES {
        let minutes = Minutes::from_minutes(minutes)?;
        let stays = [
            Exposure {
                minutes,
                air: Air::ice_bath(),
            },
            Exposure {
                minutes: IN_FRIDGE,
                air: cooling.fridge,
            },
        ];
        let cooled = cool_through(body, cooling.start, &stays, cooling.rules)?;
        if cooled.passes {
            return Ok(Some((minutes, cooled)));
        }
    }
    Ok(None)
}

fn smaller_bowls(cooling: &Cooling) -> Result<Option<CoolingRemedy>, HeatError> {
    for bowls in BOWLS {
        let body = cooling.body.shared_out(u16::from(bowls))?;
        let cooled = in_fridge(cooling, &body)?;
        if cooled.passes {
            return Ok(Some(CoolingRemedy::SmallerBowls { bowls, cooled }));
        }
    }
    Ok(None)
}
