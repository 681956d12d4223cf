//! The temperature that the dough should have off the mixer, whatever was measured.

use super::day_results::DayResults;
use super::input::DayInput;
use super::plan_times::plan_times;
use crate::engine::quantity::Temperature;
use crate::results::run::DoughBasis;

/// The temperature in °C that the dough should have off the mixer by its plan: as it is told before it
/// is measured.
pub(super) fn planned_dough(input: &DayInput, results: &DayResults) -> Temperature {
    match results.run.dough_basis {
        DoughBasis::Measured => {
            let lasts = |at| Some(results.find(at)?.1.lasts);
            let planned = plan_times(&input.sheet.formula, lasts);
            input.unmeasured_run(&planned).dough
        }
        DoughBasis::Predicted | DoughBasis::Wished => results.run.dough,
    }
}
