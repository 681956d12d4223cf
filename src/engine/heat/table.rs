//! Reading between the points of a short table by straight lines.

use crate::engine::working::{Given, Line, given};

/// A value read from a table, with the two points it lies between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Reading {
    /// What was asked for.
    pub(crate) at: f64,
    /// What was read.
    pub(crate) value: f64,
    low: (f64, f64),
    high: (f64, f64),
}

/// Reads `points`, sorted by their first number, at `at`; level beyond either end.
pub(crate) fn read(points: &[(f64, f64)], at: f64) -> Reading {
    let first = points.first().copied().unwrap_or_default();
    let last = points.last().copied().unwrap_or_default();
    let between = points
        .windows(2)
        .filter_map(|pair| match pair {
            [low, high] if at >= low.0 && at <= high.0 && high.0 > low.0 => Some((*low, *high)),
            _ => None,
        })
        .next();
    let (low, high) = between.unwrap_or(if at < first.0 {
        (first, first)
    } else {
        (last, last)
    });
    let span = high.0 - low.0;
    let value = if span > 0.0 {
        low.1 + (at - low.0) * (high.1 - low.1) / span
    } else {
        low.1
    };
    Reading {
        at,
        value,
        low,
        high,
    }
}

impl Reading {
    /// The straight line it was read from; beyond the table, its end.
    pub(crate) fn working(&self, x: Given, gives: Given, source: &'static str) -> Line {
        let span = self.high.0 - self.low.0;
        let (unit, result_unit) = (x.unit, gives.unit);
        let (rule, with) = if span > 0.0 {
            (
                format!("a + ({} − b) × (c − a) / (d − b)", x.letter),
                vec![
                    x,
                    given("a", "table, below", self.low.1, result_unit),
                    given("b", "table, below", self.low.0, unit),
                    given("c", "table, above", self.high.1, result_unit),
                    given("d", "table, above", self.high.0, unit),
                ],
            )
        } else {
            (
                "a".to_owned(),
                vec![given("a", "end of the table", self.low.1, result_unit)],
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
