//! Specific heat: how much heat a kilogram takes to warm by one degree.

use std::ops::{Mul, RangeInclusive};

use super::out_of_range::{OutOfRange, within};
use super::{HeatCapacity, Mass};

/// Held in J/(kg·K), always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SpecificHeat(f64);

impl SpecificHeat {
    /// From below any metal of a bowl to above water, J/(kg·K).
    pub const RANGE: RangeInclusive<f64> = 50.0..=10_000.0;

    /// Takes joules per kilogram and kelvin.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`SpecificHeat::RANGE`]; NaN is outside every range.
    pub fn from_joules_per_kilogram_kelvin(
        joules_per_kilogram_kelvin: f64,
    ) -> Result<Self, OutOfRange> {
        within(joules_per_kilogram_kelvin, Self::RANGE).map(Self)
    }

    /// Takes joules per kilogram and kelvin as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 1000.0; the tables hold none.
    pub(crate) const fn known(joules_per_kilogram_kelvin: f64) -> Self {
        if joules_per_kilogram_kelvin >= 50.0 && joules_per_kilogram_kelvin <= 10_000.0 {
            Self(joules_per_kilogram_kelvin)
        } else {
            Self(1000.0)
        }
    }

    /// Gives joules per kilogram and kelvin.
    #[must_use]
    pub const fn joules_per_kilogram_kelvin(self) -> f64 {
        self.0
    }
}

impl Mul<Mass> for SpecificHeat {
    type Output = HeatCapacity;
    fn mul(self, mass: Mass) -> HeatCapacity {
        HeatCapacity::from_joules_per_kelvin(self.0 * mass.grams() / 1000.0)
    }
}
