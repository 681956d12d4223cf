//! `TableReading`: a value read from a table by straight lines, with the line of its working.

use super::line::{Given, WorkingLine, given};
use crate::engine::numerics::{Segment, segment};

/// A value read from a table, with the two points it lies between.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct TableReading {
    /// Where the table was read.
    pub(crate) at: f64,
    /// What was read.
    pub(crate) value: f64,
    between: Segment,
}

impl TableReading {
    /// Reads `points`, sorted by their first number, at `at`; constant beyond either end. An empty
    /// table reads as zero.
    pub(crate) fn of(points: &[(f64, f64)], at: f64) -> Self {
        let between = segment(points.iter().copied(), at).unwrap_or_default();
        Self {
            at,
            value: between.at(at),
            between,
        }
    }

    /// The straight line it was read from; beyond the table, its end.
    pub(crate) fn working(&self, x: Given, result: Given, source: &'static str) -> WorkingLine {
        let Segment { low, high } = self.between;
        let (unit, result_unit) = (x.unit, result.unit);
        let (rule, with) = if self.between.is_end() {
            let end = given("a", "end of the table", low.1, result_unit);
            ("a".to_owned(), vec![end])
        } else {
            (
                format!("a + ({} − b) × (c − a) / (d − b)", x.letter),
                vec![
                    x,
                    given("a", "table, below", low.1, result_unit),
                    given("b", "table, below", low.0, unit),
                    given("c", "table, above", high.1, result_unit),
                    given("d", "table, above", high.0, unit),
                ],
            )
        };
        WorkingLine {
            rule: rule.into(),
            with,
            result,
            source: source.into(),
        }
    }
}
