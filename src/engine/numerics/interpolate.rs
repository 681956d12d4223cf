//! Piecewise linear interpolation in a sorted table, and its inverse.

/// Two neighbouring points of a table, as (x, y); equal where x lies beyond an end.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Segment {
    /// The last point at or before x.
    pub low: (f64, f64),
    /// The first point after x.
    pub high: (f64, f64),
}

impl Segment {
    /// Whether x lay beyond an end of the table, or on its last point.
    #[must_use]
    pub fn is_end(&self) -> bool {
        self.high.0 <= self.low.0
    }

    /// The straight line's y at `x`: `y₀ + (x − x₀)·(y₁ − y₀)/(x₁ − x₀)`; level where both points
    /// have the same x.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        if self.is_end() {
            return self.low.1;
        }
        self.low.1 + (x - self.low.0) * (self.high.1 - self.low.1) / (self.high.0 - self.low.0)
    }
}

/// The two points of a table between which `x` lies; `None` for an empty table.
///
/// `points` are sorted by x. A point belongs to the segment that begins there, so each point's own
/// y is returned exactly. Before the first point and from the last one on, both points of the
/// segment are that end. Of several points with one x the last counts. NaN lies beyond the last.
#[must_use]
pub fn segment(points: impl IntoIterator<Item = (f64, f64)>, x: f64) -> Option<Segment> {
    let mut before = None;
    for point in points {
        if x < point.0 {
            return Some(Segment {
                low: before.unwrap_or(point),
                high: point,
            });
        }
        before = Some(point);
    }
    before.map(|last| Segment {
        low: last,
        high: last,
    })
}

/// The piecewise linear y of a table at `x`: constant beyond either end; `None` for an empty table.
///
/// `points` are sorted by x, see [`segment`].
#[must_use]
pub fn interpolate(points: impl IntoIterator<Item = (f64, f64)>, x: f64) -> Option<f64> {
    segment(points, x).map(|found| found.at(x))
}

/// The smallest x at or after `from` at which the piecewise linear curve takes the value `level`.
///
/// `points` are sorted by x; y may rise and fall. `None` where the curve never takes that value
/// from `from` up to its last point: nothing is extrapolated.
#[must_use]
pub fn first_crossing(
    points: impl IntoIterator<Item = (f64, f64)>,
    level: f64,
    from: f64,
) -> Option<f64> {
    let mut before: Option<(f64, f64)> = None;
    for point in points {
        if point.0 >= from {
            let start = match before {
                Some(low) if low.0 < from => (from, Segment { low, high: point }.at(from)),
                Some(low) => low,
                None => point,
            };
            if let Some(x) = crossing(start, point, level) {
                return Some(x);
            }
        }
        before = Some(point);
    }
    None
}

/// Where the straight line from `low` to `high` takes the value `level`; its beginning where it is
/// level there.
fn crossing(low: (f64, f64), high: (f64, f64), level: f64) -> Option<f64> {
    let (start, end) = (low.1 - level, high.1 - level);
    let crosses = (start <= 0.0 && end >= 0.0) || (start >= 0.0 && end <= 0.0);
    let change = start - end;
    let share = if change.abs() > 0.0 {
        start / change
    } else {
        0.0
    };
    crosses.then(|| low.0 + share * (high.0 - low.0))
}
