//! The middle of the bread as it was measured, beside what it is to reach.

use super::day_results::DayResults;
use crate::engine::heat::CoreTarget;
use crate::engine::quantity::Temperature;
use crate::sheet::day::Findings;

/// What a thermometer may be out by, K. Common practice.
const THERMOMETER: f64 = 0.5;

/// A middle that is not done yet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Underbaked {
    /// The temperature that was measured.
    pub found: Temperature,
    /// What it is to reach.
    pub wanted: CoreTarget,
}

/// Returns the middle of the bread where it was measured and is too cold; `None` where it is done, was
/// not measured, or where no bake is worked out.
#[must_use]
pub fn underbaked(findings: &Findings, results: &DayResults) -> Option<Underbaked> {
    let found = findings.core?;
    let wanted = results.run.baking.as_ref().ok()?.core;
    let is_cold = found.celsius() + THERMOMETER < wanted.from.celsius();
    is_cold.then_some(Underbaked { found, wanted })
}
