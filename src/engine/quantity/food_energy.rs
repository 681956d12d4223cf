//! Food energy: what a food gives the body, in the two units of labels.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Kilojoules and kilocalories, each by its own factors as the law wants: neither is worked out
/// from the other. Always finite, never below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct FoodEnergy {
    kilojoules: f64,
    kilocalories: f64,
}

impl FoodEnergy {
    /// None to more than a tonne of fat holds, in either unit.
    pub const RANGE: RangeInclusive<f64> = 0.0..=1e9;

    /// Takes kilojoules and kilocalories.
    ///
    /// # Errors
    /// [`OutOfRange`] when either is outside [`FoodEnergy::RANGE`]; NaN is outside every range.
    pub fn from_both(kilojoules: f64, kilocalories: f64) -> Result<Self, OutOfRange> {
        Ok(Self {
            kilojoules: within(kilojoules, Self::RANGE)?,
            kilocalories: within(kilocalories, Self::RANGE)?,
        })
    }

    /// Gives kilojoules.
    #[must_use]
    pub const fn kilojoules(self) -> f64 {
        self.kilojoules
    }

    /// Gives kilocalories.
    #[must_use]
    pub const fn kilocalories(self) -> f64 {
        self.kilocalories
    }
}
