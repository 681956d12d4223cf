//! Volume: how much room something takes, or has.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};
use super::{Mass, SpecificVolume};

/// How much room. Held in cm³, always finite, never below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Volume(f64);

impl Volume {
    /// Nothing to a thousand cubic metres, cm³.
    pub const RANGE: RangeInclusive<f64> = 0.0..=1e9;

    /// Takes cubic centimetres, which are millilitres.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Volume::RANGE`]; NaN is outside every range.
    pub fn from_cubic_centimetres(cubic_centimetres: f64) -> Result<Self, OutOfRange> {
        within(cubic_centimetres, Self::RANGE).map(Self)
    }

    /// Gives cubic centimetres.
    #[must_use]
    pub const fn cubic_centimetres(self) -> f64 {
        self.0
    }

    /// What fills it at so many cubic centimetres a gram.
    ///
    /// # Errors
    /// [`OutOfRange`] when that is more than a tonne.
    pub fn filled_at(self, room: SpecificVolume) -> Result<Mass, OutOfRange> {
        Mass::from_grams(self.0 / room.cubic_centimetres_per_gram())
    }
}
