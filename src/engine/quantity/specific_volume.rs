//! Specific volume: how much room a gram takes, or is given.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in cm³/g, always finite, always above zero.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SpecificVolume(f64);

impl SpecificVolume {
    /// From the heaviest paste to the lightest crumb, cm³/g.
    pub const RANGE: RangeInclusive<f64> = 0.5..=20.0;

    /// Takes cubic centimetres per gram.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`SpecificVolume::RANGE`]; NaN is outside every range.
    pub fn from_cubic_centimetres_per_gram(
        cubic_centimetres_per_gram: f64,
    ) -> Result<Self, OutOfRange> {
        within(cubic_centimetres_per_gram, Self::RANGE).map(Self)
    }

    /// Takes cm³/g as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 1; the tables hold none.
    pub(crate) const fn known(cubic_centimetres_per_gram: f64) -> Self {
        if cubic_centimetres_per_gram >= 0.5 && cubic_centimetres_per_gram <= 20.0 {
            Self(cubic_centimetres_per_gram)
        } else {
            Self(1.0)
        }
    }

    /// Gives cubic centimetres per gram.
    #[must_use]
    pub const fn cubic_centimetres_per_gram(self) -> f64 {
        self.0
    }
}
