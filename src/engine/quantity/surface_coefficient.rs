//! Surface coefficient: how readily heat passes between a surface and what surrounds it.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in W/(m²·K), always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SurfaceCoefficient(f64);

impl SurfaceCoefficient {
    /// From a wrapped box to stirred water, W/(m²·K).
    pub const RANGE: RangeInclusive<f64> = 0.1..=20_000.0;

    /// Takes watts per square metre and kelvin.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`SurfaceCoefficient::RANGE`]; NaN is outside every range.
    pub fn from_watts_per_square_metre_kelvin(
        watts_per_square_metre_kelvin: f64,
    ) -> Result<Self, OutOfRange> {
        within(watts_per_square_metre_kelvin, Self::RANGE).map(Self)
    }

    /// Takes watts per square metre and kelvin as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 10.0; the tables hold none.
    pub(crate) const fn known(watts_per_square_metre_kelvin: f64) -> Self {
        if watts_per_square_metre_kelvin >= 0.1 && watts_per_square_metre_kelvin <= 20_000.0 {
            Self(watts_per_square_metre_kelvin)
        } else {
            Self(10.0)
        }
    }

    /// Gives watts per square metre and kelvin.
    #[must_use]
    pub const fn watts_per_square_metre_kelvin(self) -> f64 {
        self.0
    }
}
