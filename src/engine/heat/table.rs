//! A value read from a short table, with the straight line it was read from.

use crate::engine::numerics::{Segment, segment};
use crate::engine::working::{Given, Line, given};

/// A value read from a table, with the two points it lies between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Reading {
    /// The place in the table.
    pub(crate) at: f64,
    /// The value there.
    pub(crate) value: f64,
    between: Segment,
}

/// Reads `points`, sorted by their first number, at `at`; constant beyond either end, zero where
/// the table is empty.
pub(crate) fn read(points: &[(f64, f64)], at: f64) -> Reading {
    let between = segment(points.iter().copied(), at).unwrap_or(Segment {
        low: (0.0, 0.0),
        high: (0.0, 0.0),
    });
    Reading {
        at,
        value: between.at(at),
        between,
    }
}

impl Reading {
    /// The straight line it was read from; beyond the table, its end.
    pub(crate) fn working(&self, x: Given, gives: Given, source: &'static str) -> Line {
        let Segment { low, high } = self.between;
        let (unit, result_unit) = (x.unit, gives.unit);
        let (rule, with) = if self.between.is_end() {
            (
                "a".to_owned(),
                vec![given("a", "end of the table", low.1, result_unit)],
            )
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
        Line {
            rule: rule.into(),
            with,
            gives,
            source: source.into(),
        }
    }
}
