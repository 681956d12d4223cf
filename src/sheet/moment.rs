//! A point in time as stored, in milliseconds; the caller provides it.

use crate::engine::numerics::{float_from_i64, whole_i64};
use std::ops::RangeInclusive;

use crate::engine::quantity::{Instant, OutOfRange};

/// A moment: whole milliseconds since 1970 began, UTC.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Moment(f64);

impl Moment {
    /// From 1970 to the end of the year 9999, ms.
    pub const RANGE: RangeInclusive<f64> = 0.0..=253_402_300_799_999.0;

    /// Takes milliseconds since 1970 began, UTC; parts of one are dropped.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Moment::RANGE`]; NaN is outside every range.
    pub fn from_milliseconds(milliseconds: f64) -> Result<Self, OutOfRange> {
        if Self::RANGE.contains(&milliseconds) {
            Ok(Self(libm::floor(milliseconds)))
        } else {
            Err(OutOfRange {
                value: milliseconds,
                range: Self::RANGE,
            })
        }
    }

    /// Returns milliseconds since 1970 began, UTC.
    #[must_use]
    pub const fn milliseconds(self) -> f64 {
        self.0
    }

    /// The moment at which a point in time falls.
    #[must_use]
    pub fn from_instant(at: Instant) -> Self {
        Self(float_from_i64(at.seconds()) * 1000.0)
    }

    /// The point in time, to the second below.
    #[must_use]
    pub fn instant(self) -> Instant {
        Instant::held(whole_i64(self.0 / 1000.0))
    }

    /// This moment, or the one just after `earlier` if that is later.
    #[must_use]
    pub fn after(self, earlier: Self) -> Self {
        Self(self.0.max(earlier.0 + 1.0).min(*Self::RANGE.end()))
    }
}
