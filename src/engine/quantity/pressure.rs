//! Pressure: what the air weighs on the pot.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in hPa, as barometers show it, always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Pressure(f64);

impl Pressure {
    /// From above the highest town to below the lowest shore, hPa.
    pub const RANGE: RangeInclusive<f64> = 400.0..=1200.0;

    /// Takes hectopascals.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Pressure::RANGE`]; NaN is outside every range.
    pub fn from_hectopascals(hectopascals: f64) -> Result<Self, OutOfRange> {
        within(hectopascals, Self::RANGE).map(Self)
    }

    /// Gives hectopascals.
    #[must_use]
    pub const fn hectopascals(self) -> f64 {
        self.0
    }
}
