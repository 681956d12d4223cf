//! Length: how thick, how wide, how far across.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in metres, always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Length(f64);

impl Length {
    /// A tenth of a millimetre to ten metres, m.
    pub const RANGE: RangeInclusive<f64> = 1e-4..=10.0;

    /// Takes metres.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Length::RANGE`]; NaN is outside every range.
    pub fn from_metres(metres: f64) -> Result<Self, OutOfRange> {
        within(metres, Self::RANGE).map(Self)
    }

    /// Takes metres as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as a centimetre; the tables hold none.
    pub(crate) const fn known(metres: f64) -> Self {
        if metres >= 1e-4 && metres <= 10.0 {
            Self(metres)
        } else {
            Self(0.01)
        }
    }

    /// Gives metres.
    #[must_use]
    pub const fn metres(self) -> f64 {
        self.0
    }
}
