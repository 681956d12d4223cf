//! Heat per mass: latent heats, heats of hydration and of cooking.

use std::ops::{Mul, RangeInclusive};

use super::out_of_range::{OutOfRange, within};
use super::{Heat, Mass};

/// Held in J/g, which is kJ/kg; always finite, never below zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeatPerMass(f64);

impl HeatPerMass {
    /// None at all to above the heat of boiling, J/g.
    pub const RANGE: RangeInclusive<f64> = 0.0..=5000.0;

    /// Takes joules per gram.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`HeatPerMass::RANGE`]; NaN is outside every range.
    pub fn from_joules_per_gram(joules_per_gram: f64) -> Result<Self, OutOfRange> {
        within(joules_per_gram, Self::RANGE).map(Self)
    }

    /// Takes joules per gram as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 0.0; the tables hold none.
    pub(crate) const fn known(joules_per_gram: f64) -> Self {
        if joules_per_gram >= 0.0 && joules_per_gram <= 5000.0 {
            Self(joules_per_gram)
        } else {
            Self(0.0)
        }
    }

    /// Gives joules per gram.
    #[must_use]
    pub const fn joules_per_gram(self) -> f64 {
        self.0
    }
}

impl Mul<Mass> for HeatPerMass {
    type Output = Heat;
    fn mul(self, mass: Mass) -> Heat {
        Heat::from_joules(self.0 * mass.grams())
    }
}
