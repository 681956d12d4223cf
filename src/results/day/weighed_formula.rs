//! The formula with the masses that were really weighed at the bench.

use crate::engine::formula::Formula;
use crate::sheet::day::Bench;

/// Returns the formula with the masses in g that were weighed at the bench, where they were noted.
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
