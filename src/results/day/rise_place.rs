//! The place for a rise: the air temperature at which it is done nearest to a wished time.

use super::rises::{RiseInput, rises};
use super::which_rise::WhichRise;
use crate::engine::numerics::{first_integer, float_from_i64};
use crate::engine::quantity::{Minutes, Temperature};

/// A place to rise in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RisePlace {
    /// The temperature of its air.
    pub at: Temperature,
    /// How long the rise takes there.
    pub due: Minutes,
}

/// The coolest and the warmest place for a rise, whole °C: a cool cellar, and a proofing box just
/// below the temperature at which butter runs out of a dough. Common practice.
const COOLEST: i64 = 10;
const WARMEST: i64 = 35;

/// Returns the place, in whole °C, where a rise takes nearest to the wanted time; `None` where it
/// is not done within a day in any.
///
/// Up to 35 °C yeast only gets faster, so a warmer place is always sooner, and bisection finds it.
#[must_use]
pub fn rise_place(input: &RiseInput, (which, wanted): (WhichRise, Minutes)) -> Option<RisePlace> {
    let try_at = |celsius: i64| {
        let at = Temperature::from_celsius(float_from_i64(celsius)).ok()?;
        let due = due_at(input, (which, at))?;
        Some(RisePlace { at, due })
    };
    let in_time = |celsius| try_at(celsius).is_some_and(|place| place.due <= wanted);
    let Some(warm) = first_integer(COOLEST..=WARMEST, in_time) else {
        return try_at(WARMEST);
    };
    let cooler = (warm > COOLEST).then_some(warm - 1);
    let (soon, late) = (try_at(warm)?, cooler.and_then(try_at));
    let miss = |place: &RisePlace| (place.due.minutes() - wanted.minutes()).abs();
    Some(late.filter(|late| miss(late) < miss(&soon)).unwrap_or(soon))
}

fn due_at(input: &RiseInput, (which, at): (WhichRise, Temperature)) -> Option<Minutes> {
    let mut settings = *input.settings;
    match which {
        WhichRise::Bulk => settings.bulk_place = Some(at),
        WhichRise::Proof => settings.proof_place = Some(at),
    }
    let rises = rises(&RiseInput {
        settings: &settings,
        ..*input
    });
    rises.of(which).ok().map(|risen| risen.due)
}
