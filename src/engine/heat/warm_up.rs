//! Standing: how long something cold must stand out to come to a temperature.

use super::body::{Air, Body};
use super::conduction::{Curve, Exposure, Probe, simulate};
use super::error::HeatError;
use crate::engine::quantity::{Minutes, Temperature};

/// What standing does.
#[derive(Clone, Debug, PartialEq)]
pub struct Stood {
    /// How long until it is there on the whole, once stirred.
    pub minutes: Minutes,
    /// Sample by moment over a day.
    pub curve: Curve,
}

/// How long a standing is followed, min.
const FOLLOWED: f64 = 1440.0;

/// How long `body` must stand in `air` to come from `start` to `target` on the whole;
/// no time where it is there, or beyond, already.
///
/// # Errors
/// [`HeatError::NeverReached`] where the air is not beyond the target, or a day is not enough.
pub fn stand(
    body: &Body,
    start: Temperature,
    air: Air,
    target: Temperature,
) -> Result<Stood, HeatError> {
    let stay = Exposure {
        minutes: Minutes::from_minutes(FOLLOWED)?,
        air,
    };
    let curve = simulate(body, start, &[stay])?;
    let never = HeatError::NeverReached {
        target,
        surroundings: air.temperature,
    };
    let minutes = curve
        .reaches(target, Probe::Mean, Minutes::ZERO)
        .ok_or(never)?;
    Ok(Stood { minutes, curve })
}
