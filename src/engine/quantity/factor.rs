//! Factor: how many times the formula a batch is.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// How many times over. Always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Factor(f64);

impl Factor {
    /// A millionth to a million times.
    pub const RANGE: RangeInclusive<f64> = 1e-6..=1e6;

    /// Just as it is.
    pub const ONE: Self = Self(1.0);

    /// Twice over.
    pub const TWO: Self = Self(2.0);

    /// Takes a plain number.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Factor::RANGE`]; NaN is outside every range.
    pub fn from_number(number: f64) -> Result<Self, OutOfRange> {
        within(number, Self::RANGE).map(Self)
    }

    /// Takes a number as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as one; the tables hold none.
    pub(crate) const fn known(number: f64) -> Self {
        if number >= 1e-6 && number <= 1e6 {
            Self(number)
        } else {
            Self::ONE
        }
    }

    /// Gives the plain number.
    #[must_use]
    pub const fn number(self) -> f64 {
        self.0
    }
}

impl Default for Factor {
    fn default() -> Self {
        Self::ONE
    }
}
