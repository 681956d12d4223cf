//! Heat: what is brought, taken or kept.

use std::iter::Sum;
use std::ops::{Add, Neg, Sub};

/// Held in joules. An in-between: any number, above or below zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Heat(f64);

impl Heat {
    /// None.
    pub const ZERO: Self = Self(0.0);

    /// Takes joules.
    #[must_use]
    pub const fn from_joules(joules: f64) -> Self {
        Self(joules)
    }

    /// Gives joules.
    #[must_use]
    pub const fn joules(self) -> f64 {
        self.0
    }
}

impl Add for Heat {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sum for Heat {
    fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
        all.fold(Self::ZERO, Add::add)
    }
}

impl Sub for Heat {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for Heat {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}
