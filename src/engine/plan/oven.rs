//! Loads of the oven: how long several take, and how long the last waits.

use crate::engine::quantity::Minutes;

/// Several loads, one after the other.
#[derive(Clone, Debug, PartialEq)]
pub struct OvenRun {
    /// How many.
    pub loads: u16,
    /// From the first into the oven to the last out of it.
    pub total: Minutes,
    /// How long each waits for the oven after the first has gone in.
    pub waits: Vec<Minutes>,
    /// How much later each should begin its proof, so that it goes in when it is up.
    pub starts_later: Vec<Minutes>,
}

/// Between one load and the next: door open, loaves out, oven back to its heat. Common practice.
const BETWEEN: f64 = 5.0;

/// So many loads of a bake, of which each may wait `bears` once it is up.
#[must_use]
pub fn oven_run(loads: u16, bake: Minutes, bears: Minutes) -> OvenRun {
    let loads = loads.max(1);
    let each = bake.minutes() + BETWEEN;
    let held = |minutes: f64| {
        Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
    };
    let waits: Vec<Minutes> = (0..loads)
        .map(|load| held(f64::from(load) * each))
        .collect();
    let starts_later = waits
        .iter()
        .map(|wait| held(wait.minutes() - bears.minutes()))
        .collect();
    OvenRun {
        loads,
        total: held(f64::from(loads) * each - BETWEEN),
        waits,
        starts_later,
    }
}
