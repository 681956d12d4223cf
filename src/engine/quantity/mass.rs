//! Mass, and change of mass: what lies on the scale, and what is missing or too much.

use std::iter::Sum;
use std::ops::{Add, Neg, RangeInclusive, Sub};

use super::out_of_range::{OutOfRange, within};
use super::{Factor, Share};

/// How heavy something is. Held in grams, always finite, never below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Mass(f64);

impl Mass {
    /// Nothing to a tonne, g.
    pub const RANGE: RangeInclusive<f64> = 0.0..=1_000_000.0;

    /// Nothing at all.
    pub const ZERO: Self = Self(0.0);

    /// Takes grams.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Mass::RANGE`]; NaN is outside every range.
    pub fn from_grams(grams: f64) -> Result<Self, OutOfRange> {
        within(grams, Self::RANGE).map(Self)
    }

    /// Takes grams as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as nothing; the tables hold none.
    pub(crate) const fn known(grams: f64) -> Self {
        if grams >= 0.0 && grams <= 1_000_000.0 {
            Self(grams)
        } else {
            Self::ZERO
        }
    }

    /// Gives grams.
    #[must_use]
    pub const fn grams(self) -> f64 {
        self.0
    }

    /// This much of it: `share` 0.5 is half.
    #[must_use]
    pub fn component(self, share: Share) -> Self {
        Self(self.0 * share.fraction())
    }

    /// The whole times a batch factor.
    #[must_use]
    pub fn times(self, factor: Factor) -> Self {
        Self(self.0 * factor.number())
    }

    /// This mass as a share of `whole`; `None` where there is no whole to share.
    #[must_use]
    pub fn share_of(self, whole: Self) -> Option<Share> {
        if whole.0 > 0.0 {
            Share::from_fraction(self.0 / whole.0).ok()
        } else {
            None
        }
    }

    /// What is left when `other` is taken away, nothing when it is the larger.
    #[must_use]
    pub fn less(self, other: Self) -> Self {
        Self((self.0 - other.0).max(0.0))
    }

    /// This mass changed by `change`.
    ///
    /// # Errors
    /// [`OutOfRange`] when less than nothing, or more than a tonne, would be left.
    pub fn changed_by(self, change: MassChange) -> Result<Self, OutOfRange> {
        Self::from_grams(self.0 + change.0)
    }
}

impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Mass {
    type Output = MassChange;
    fn sub(self, other: Self) -> MassChange {
        MassChange(self.0 - other.0)
    }
}

impl Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        masses.fold(Self::ZERO, Add::add)
    }
}

/// How much heavier or lighter. Held in grams, may be below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct MassChange(f64);

impl MassChange {
    /// Gives grams.
    #[must_use]
    pub const fn grams(self) -> f64 {
        self.0
    }

    /// How large the change is, whichever way it goes.
    #[must_use]
    pub fn size(self) -> Mass {
        Mass(self.0.abs())
    }
}

impl Add for MassChange {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Neg for MassChange {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Sum for MassChange {
    fn sum<I: Iterator<Item = Self>>(changes: I) -> Self {
        changes.fold(Self(0.0), Add::add)
    }
}
