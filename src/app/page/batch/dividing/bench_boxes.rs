//! What was typed about the dough on the bench, and for which formula.

use crate::results::batch::dividing::DoughOnBench;
use crate::sheet::Id;

/// What was typed about the dough on the bench.
#[derive(Clone, Default, PartialEq)]
pub struct BenchBoxes {
    /// The formula it was typed for.
    formula: Option<Id>,
    dough: DoughOnBench,
}

impl BenchBoxes {
    /// What was typed for a formula.
    pub const fn of(formula: Option<Id>, dough: DoughOnBench) -> Self {
        Self { formula, dough }
    }

    /// What is on the bench of a formula; nothing where it was typed for another.
    pub fn dough(&self, formula: Option<&Id>) -> DoughOnBench {
        if self.formula.as_ref() == formula {
            self.dough
        } else {
            DoughOnBench::default()
        }
    }
}
