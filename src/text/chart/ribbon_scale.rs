//! The scale of the day ribbon: straight, but narrower through the nights.

use crate::engine::numerics::float_from_i64;
use crate::engine::plan::Span;
use crate::engine::quantity::Instant;

/// Width of the ribbon.
pub(super) const WIDTH: f64 = 340.0;
/// How much narrower an hour of the night is than one of the day.
const NIGHT: f64 = 0.2;

/// Time along the ribbon: straight, but slower through the nights.
pub(super) struct Scale {
    from: i64,
    nights: Vec<(i64, i64)>,
    /// The width of the whole, in seconds of the day.
    all: f64,
}

impl Scale {
    /// The scale from the left edge to the right.
    pub(super) fn of(from: Instant, until: Instant, nights: &[Span]) -> Self {
        let nights = nights.iter();
        let mut scale = Self {
            from: from.seconds(),
            nights: nights
                .map(|night| (night.from.seconds(), night.until.seconds()))
                .collect(),
            all: 1.0,
        };
        scale.all = scale.passed(until).max(1.0);
        scale
    }

    /// The seconds since the left edge, those of the night counted as fewer.
    fn passed(&self, at: Instant) -> f64 {
        let at = at.seconds();
        let asleep = self.nights.iter().map(|(begins, ends)| {
            let within = at.min(*ends) - self.from.max(*begins);
            seconds(within)
        });
        seconds(at - self.from) - (1.0 - NIGHT) * asleep.sum::<f64>()
    }

    /// How far along the ribbon a point in time is.
    pub(super) fn x(&self, at: Instant) -> f64 {
        WIDTH * (self.passed(at) / self.all).clamp(0.0, 1.0)
    }
}

/// Seconds of a plan as a number; a plan of more than a century is cut off.
fn seconds(seconds: i64) -> f64 {
    float_from_i64(seconds.clamp(0, i64::from(u32::MAX)))
}
