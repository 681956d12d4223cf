//! Altitude: how high the kitchen stands above the sea.

use std::ops::RangeInclusive;

use super::out_of_range::{OutOfRange, within};

/// Held in metres, always finite; below zero beside the Dead Sea.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Altitude(f64);

impl Altitude {
    /// The lowest shore to above the highest town, m.
    pub const RANGE: RangeInclusive<f64> = -500.0..=6000.0;

    /// At the sea.
    pub const SEA_LEVEL: Self = Self(0.0);

    /// Takes metres.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Altitude::RANGE`]; NaN is outside every range.
    pub fn from_metres(metres: f64) -> Result<Self, OutOfRange> {
        within(metres, Self::RANGE).map(Self)
    }

    /// Gives metres.
    #[must_use]
    pub const fn metres(self) -> f64 {
        self.0
    }
}
