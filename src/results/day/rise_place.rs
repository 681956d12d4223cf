//! A place to rise in: how warm it must be there for a dough to be up in a wished time.

use super::rises::{Known, rising};
use crate::engine::formula::Formula;
use crate::engine::quantity::{Minutes, Temperature};
use crate::engine::rise::RiseSettings;
use crate::sheet::{HeatSettings, Kitchen};

/// Which of the two rises.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhichRise {
    /// The dough in one piece.
    Bulk,
    /// The pieces in the tin.
    Proof,
}

/// Somewhere to rise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RisePlace {
    /// How warm it is there.
    pub at: Temperature,
    /// When the dough is up there.
    pub due: Minutes,
}

/// The coldest and the warmest place a dough is put to rise, whole °C: a cool cellar, and a proofing
/// box before butter runs out of a dough. Common practice.
const COOLEST: u8 = 10;
const WARMEST: u8 = 35;

/// Among places of whole degrees, the one where a rise is due nearest to `wanted`; `None` where the
/// dough is up in none of them.
///
/// The warmer the place, the sooner: up to 35 °C yeast only gets faster, so halving finds it.
#[must_use]
pub fn rise_place(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    settings: &RiseSettings,
    known: &Known,
    (which, wanted): (WhichRise, Minutes),
) -> Option<RisePlace> {
    let try_at = |celsius: u8| {
        let at = Temperature::from_celsius(f64::from(celsius)).ok()?;
        let due = due_at(formula, kitchen, heat, settings, known, (which, at))?;
        Some(RisePlace { at, due })
    };
    // At `warm` it is up in time, at `cool` it is not, or it is not up at all.
    let (mut cool, mut warm) = (COOLEST, WARMEST);
    let in_time = |place: &RisePlace| place.due <= wanted;
    let warmest = try_at(warm)?;
    if !in_time(&warmest) {
        return Some(warmest);
    }
    if let Some(coolest) = try_at(cool).filter(in_time) {
        return Some(coolest);
    }
    while warm - cool > 1 {
        let middle = cool.midpoint(warm);
        if try_at(middle).is_some_and(|place| in_time(&place)) {
            warm = middle;
        } else {
            cool = middle;
        }
    }
    let (soon, late) = (try_at(warm)?, try_at(cool));
    let miss = |place: &RisePlace| (place.due.minutes() - wanted.minutes()).abs();
    Some(late.filter(|late| miss(late) < miss(&soon)).unwrap_or(soon))
}

fn due_at(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    settings: &RiseSettings,
    known: &Known,
    (which, at): (WhichRise, Temperature),
) -> Option<Minutes> {
    let mut settings = *settings;
    match which {
        WhichRise::Bulk => settings.bulk_place = Some(at),
        WhichRise::Proof => settings.proof_place = Some(at),
    }
    let rising = rising(formula, kitchen, heat, &settings, known);
    let risen = match which {
        WhichRise::Bulk => rising.bulk,
        WhichRise::Proof => rising.proof,
    };
    risen.ok().map(|risen| risen.due)
}
