//! Mass, and change of mass: what lies on the scale, and what is missing or too much.

use std::iter::Sum;
use std::ops::{Add, Neg, RangeInclusive, Sub};

use super::out_of_range::{OutOfRange, saturated, within};
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

    /// This much of it: `share` 0.5 is half. Saturates at the end of [`Mass::RANGE`].
    #[must_use]
    pub fn component(self, share: Share) -> Self {
        Self(saturated(self.0 * share.fraction(), Self::RANGE))
    }

    /// As [`Mass::component`], for a share that may be more than the whole.
    ///
    /// # Errors
    /// [`OutOfRange`] when it is more than a tonne.
    pub fn try_component(self, share: Share) -> Result<Self, OutOfRange> {
        Self::from_grams(self.0 * share.fraction())
    }

    /// This mass times a batch factor.
    ///
    /// # Errors
    /// [`OutOfRange`] when it is more than a tonne.
    pub fn try_times(self, factor: Factor) -> Result<Self, OutOfRange> {
        Self::from_grams(self.0 * factor.number())
    }

    /// Both together.
    ///
    /// # Errors
    /// [`OutOfRange`] when they are more than a tonne.
    pub fn try_add(self, other: Self) -> Result<Self, OutOfRange> {
        Self::from_grams(self.0 + other.0)
    }

    /// A sum or product that did not saturate: everything below the end of [`Mass::RANGE`].
    ///
    /// # Errors
    /// [`OutOfRange`] at the end of the range: what was added up may be more.
    pub fn unsaturated(self) -> Result<Self, OutOfRange> {
        let range = Self::RANGE;
        if self.0 < *range.end() {
            Ok(self)
        } else {
            Err(OutOfRange {
                value: self.0,
                range,
            })
        }
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
}

/// Saturates at the end of [`Mass::RANGE`]; see [`Mass::try_add`] and [`Mass::unsaturated`].
impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(saturated(self.0 + other.0, Self::RANGE))
    }
}

impl Sub for Mass {
    type Output = MassChange;
    fn sub(self, other: Self) -> MassChange {
        MassChange(self.0 - other.0)
    }
}

/// Saturates at the end of [`Mass::RANGE`].
impl Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        masses.fold(Self::ZERO, Add::add)
    }
}

/// How much heavier or lighter. Held in grams, always finite, may be below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct MassChange(f64);

impl MassChange {
    /// A tonne less to a tonne more, g.
    pub const RANGE: RangeInclusive<f64> = -1_000_000.0..=1_000_000.0;

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

/// Saturates at either end of [`MassChange::RANGE`].
impl Add for MassChange {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(saturated(self.0 + other.0, Self::RANGE))
    }
}

impl Neg for MassChange {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

/// Saturates at either end of [`MassChange::RANGE`].
impl Sum for MassChange {
    fn sum<I: Iterator<Item = Self>>(changes: I) -> Self {
        changes.fold(Self(0.0), Add::add)
    }
}
