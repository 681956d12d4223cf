//! Share: so much of something else, as a fraction or in percent.

use std::ops::{RangeInclusive, Sub};

use super::out_of_range::{OutOfRange, within};

/// A part of something, or a multiple of it. Held as a fraction: 1 is the whole, 0.65 is 65 %.
///
/// A baker's percentage may pass 100 %, so the range does too.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Share(f64);

impl Share {
    /// None at all to a hundred million times the whole, as a fraction.
    pub const RANGE: RangeInclusive<f64> = 0.0..=1e8;

    /// None of it.
    pub const NONE: Self = Self(0.0);

    /// All of it.
    pub const WHOLE: Self = Self(1.0);

    /// Takes a fraction.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Share::RANGE`]; NaN is outside every range.
    pub fn from_fraction(fraction: f64) -> Result<Self, OutOfRange> {
        within(fraction, Self::RANGE).map(Self)
    }

    /// Takes percent.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Share::RANGE`] times a hundred; NaN is outside every range.
    pub fn from_percent(percent: f64) -> Result<Self, OutOfRange> {
        let most = *Self::RANGE.end() * 100.0;
        within(percent, 0.0..=most).map(|percent| Self(percent / 100.0))
    }

    /// Takes grams in a hundred grams, as tables print them, at compile time.
    ///
    /// Anything that is not a number from 0 to 100 counts as none; the ingredient table's own test holds
    /// that no row has such a number.
    #[must_use]
    pub(crate) const fn in_hundred(grams: f64) -> Self {
        if grams >= 0.0 && grams <= 100.0 {
            Self(grams / 100.0)
        } else {
            Self(0.0)
        }
    }

    /// Gives the fraction.
    #[must_use]
    pub const fn fraction(self) -> f64 {
        self.0
    }

    /// Gives percent.
    #[must_use]
    pub fn percent(self) -> f64 {
        self.0 * 100.0
    }

    /// Both together. Saturates at the end of [`Share::RANGE`].
    #[must_use]
    pub const fn plus(self, other: Self) -> Self {
        Self((self.0 + other.0).min(*Self::RANGE.end()))
    }

    /// Both together.
    ///
    /// # Errors
    /// [`OutOfRange`] beyond the end of [`Share::RANGE`].
    pub fn try_plus(self, other: Self) -> Result<Self, OutOfRange> {
        Self::from_fraction(self.0 + other.0)
    }

    /// This much of it: `share` 0.5 is half. Saturates at the end of [`Share::RANGE`].
    #[must_use]
    pub fn component(self, share: Self) -> Self {
        Self((self.0 * share.0).min(*Self::RANGE.end()))
    }

    /// This share, but no more than `most`.
    #[must_use]
    pub fn at_most(self, most: Self) -> Self {
        Self(self.0.min(most.0))
    }

    /// What is left when `other` is taken away, none when it is the larger.
    #[must_use]
    pub fn less(self, other: Self) -> Self {
        Self((self.0 - other.0).max(0.0))
    }
}

impl Sub for Share {
    type Output = ShareChange;
    fn sub(self, other: Self) -> ShareChange {
        ShareChange(self.0 - other.0)
    }
}

/// How much more or less of the whole. Held as a fraction, always finite, may be below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct ShareChange(f64);

impl ShareChange {
    /// The whole of [`Share::RANGE`], less or more, as a fraction.
    pub const RANGE: RangeInclusive<f64> = -1e8..=1e8;

    /// Gives the fraction.
    #[must_use]
    pub const fn fraction(self) -> f64 {
        self.0
    }

    /// Gives percentage points.
    #[must_use]
    pub fn points(self) -> f64 {
        self.0 * 100.0
    }
}
