//! Heat capacity: how much heat a thing takes to warm by one degree.

use std::iter::Sum;
use std::ops::{Add, Mul};

use super::{Heat, TemperatureChange};

/// Held in J/K. An in-between: any number.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct HeatCapacity(f64);

impl HeatCapacity {
    /// None.
    pub const ZERO: Self = Self(0.0);

    /// Takes joules per kelvin.
    #[must_use]
    pub const fn from_joules_per_kelvin(joules_per_kelvin: f64) -> Self {
        Self(joules_per_kelvin)
    }

    /// Gives joules per kelvin.
    #[must_use]
    pub const fn joules_per_kelvin(self) -> f64 {
        self.0
    }
}

impl Add for HeatCapacity {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sum for HeatCapacity {
    fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
        all.fold(Self::ZERO, Add::add)
    }
}

impl Mul<TemperatureChange> for HeatCapacity {
    type Output = Heat;
    fn mul(self, change: TemperatureChange) -> Heat {
        Heat::from_joules(self.0 * change.kelvin())
    }
}
