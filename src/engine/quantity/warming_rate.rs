//! Warming rate: how fast mixing warms a dough.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in kelvin a minute, always finite, never below zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct WarmingRate(f64);

impl WarmingRate {
    /// None at all to the fiercest mixer, K/min.
    pub const RANGE: RangeInclusive<f64> = 0.0..=20.0;

    /// Takes kelvin per minute.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`WarmingRate::RANGE`]; NaN is outside every range.
    pub fn from_kelvin_per_minute(kelvin_per_minute: f64) -> Result<Self, OutOfRange> {
        within(kelvin_per_minute, Self::RANGE).map(Self)
    }

    /// Takes kelvin per minute as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 0.0; the tables hold none.
    pub(crate) const fn known(kelvin_per_minute: f64) -> Self {
        if kelvin_per_minute >= 0.0 && kelvin_per_minute <= 20.0 {
            Self(kelvin_per_minute)
        } else {
            Self(0.0)
        }
    }

    /// Gives kelvin per minute.
    #[must_use]
    pub const fn kelvin_per_minute(self) -> f64 {
        self.0
    }
}
