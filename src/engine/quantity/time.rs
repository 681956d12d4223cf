//! Time: how long something takes, or how long it has been going on.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in minutes, always finite, never below zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Minutes(f64);

impl Minutes {
    /// No time at all.
    pub const ZERO: Self = Self(0.0);

    /// No time at all to sixty days, min.
    pub const RANGE: RangeInclusive<f64> = 0.0..=86_400.0;

    /// Takes minutes.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Minutes::RANGE`]; NaN is outside every range.
    pub fn from_minutes(minutes: f64) -> Result<Self, OutOfRange> {
        within(minutes, Self::RANGE).map(Self)
    }

    /// Takes minutes as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 0.0; the tables hold none.
    pub(crate) const fn known(minutes: f64) -> Self {
        if minutes >= 0.0 && minutes <= 86_400.0 {
            Self(minutes)
        } else {
            Self(0.0)
        }
    }

    /// Gives minutes.
    #[must_use]
    pub const fn minutes(self) -> f64 {
        self.0
    }

    /// Takes hours.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Minutes::RANGE`]; NaN is outside every range.
    pub fn from_hours(hours: f64) -> Result<Self, OutOfRange> {
        Self::from_minutes(hours * 60.0)
    }

    /// Gives hours.
    #[must_use]
    pub fn hours(self) -> f64 {
        self.0 / 60.0
    }
}
