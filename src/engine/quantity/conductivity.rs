//! Conductivity: how readily heat flows through a stuff.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in W/(m·K), always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Conductivity(f64);

impl Conductivity {
    /// From still air to copper, W/(m·K).
    pub const RANGE: RangeInclusive<f64> = 0.01..=500.0;

    /// Takes watts per metre and kelvin.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Conductivity::RANGE`]; NaN is outside every range.
    pub fn from_watts_per_metre_kelvin(watts_per_metre_kelvin: f64) -> Result<Self, OutOfRange> {
        within(watts_per_metre_kelvin, Self::RANGE).map(Self)
    }

    /// Gives watts per metre and kelvin.
    #[must_use]
    pub const fn watts_per_metre_kelvin(self) -> f64 {
        self.0
    }
}
