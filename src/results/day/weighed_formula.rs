//! The formula with the masses that were really weighed at the bench.

use crate::engine::formula::Formula;
use crate::sheet::day::Bench;

/// The formula with the masses that were really weighed.
#[must_use]
pub fn as_weighed(formula: &Formula, bench: &Bench) -> Formula {
    let mut formula = formula.clone();
    for weighing in &bench.weighed {
        if let Some(line) = formula.line_mut(weighing.at) {
            line.poured = weighing.mass;
        }
    }
    formula
}
