//! Density: how much a cubic metre weighs.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in kg/m³, always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Density(f64);

impl Density {
    /// From the lightest crumb to the heaviest bowl, kg/m³.
    pub const RANGE: RangeInclusive<f64> = 20.0..=20_000.0;

    /// Takes kilograms per cubic metre.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Density::RANGE`]; NaN is outside every range.
    pub fn from_kilograms_per_cubic_metre(
        kilograms_per_cubic_metre: f64,
    ) -> Result<Self, OutOfRange> {
        within(kilograms_per_cubic_metre, Self::RANGE).map(Self)
    }

    /// Gives kilograms per cubic metre.
    #[must_use]
    pub const fn kilograms_per_cubic_metre(self) -> f64 {
        self.0
    }
}
