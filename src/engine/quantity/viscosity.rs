//! Viscosity: how thick a liquid is.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Dynamic viscosity. Held in Pa·s, always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Viscosity(f64);

impl Viscosity {
    /// From thinner than hot water to stiffer than any paste, Pa·s.
    pub const RANGE: RangeInclusive<f64> = 1e-5..=1e9;

    /// Takes pascal seconds.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Viscosity::RANGE`]; NaN is outside every range.
    pub fn from_pascal_seconds(pascal_seconds: f64) -> Result<Self, OutOfRange> {
        within(pascal_seconds, Self::RANGE).map(Self)
    }

    /// Gives pascal seconds.
    #[must_use]
    pub const fn pascal_seconds(self) -> f64 {
        self.0
    }
}
