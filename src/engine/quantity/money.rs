//! Money: what something costs, in whatever currency the user calls it by.

use std::iter::Sum;
use std::ops::{Add, RangeInclusive};

use super::Share;
use super::out_of_range::{OutOfRange, saturated, within};

/// An amount of money. Always finite, never below zero; its currency is only a name.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Money(f64);

impl Money {
    /// Nothing to a thousand million.
    pub const RANGE: RangeInclusive<f64> = 0.0..=1e9;

    /// Nothing.
    pub const NONE: Self = Self(0.0);

    /// Takes an amount.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Money::RANGE`]; NaN is outside every range.
    pub fn from_amount(amount: f64) -> Result<Self, OutOfRange> {
        within(amount, Self::RANGE).map(Self)
    }

    /// Gives the amount.
    #[must_use]
    pub const fn amount(self) -> f64 {
        self.0
    }

    /// This much of it.
    ///
    /// # Errors
    /// [`OutOfRange`] when that is more than money may be.
    pub fn component(self, share: Share) -> Result<Self, OutOfRange> {
        Self::from_amount(self.0 * share.fraction())
    }

    /// So many times.
    ///
    /// # Errors
    /// [`OutOfRange`] when that is more than money may be.
    pub fn times(self, count: u32) -> Result<Self, OutOfRange> {
        Self::from_amount(self.0 * f64::from(count))
    }

    /// A sum that did not saturate: everything below the end of [`Money::RANGE`].
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

    /// Shared among so many; all of it where there is nobody.
    #[must_use]
    pub fn among(self, count: u32) -> Self {
        Self(self.0 / f64::from(count.max(1)))
    }
}

/// Saturates at the end of [`Money::RANGE`].
impl Add for Money {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(saturated(self.0 + other.0, Self::RANGE))
    }
}

/// Saturates at the end of [`Money::RANGE`].
impl Sum for Money {
    fn sum<I: Iterator<Item = Self>>(amounts: I) -> Self {
        amounts.fold(Self::NONE, Add::add)
    }
}
