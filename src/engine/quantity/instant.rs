//! Instant: a point in time, counted from one that everybody agrees on.

use crate::engine::numerics::{float_from_i64, whole};
use std::ops::RangeInclusive;

use super::out_of_range::OutOfRange;
use super::time::Minutes;

/// A point in time: whole seconds since 1970 began, UTC. Whoever knows the time gives it; the
/// engine has no clock.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Instant(i64);

impl Instant {
    /// From 1970 to the end of the year 9999, s.
    pub const RANGE: RangeInclusive<i64> = 0..=253_402_300_799;

    /// Takes seconds since 1970 began, UTC.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Instant::RANGE`].
    pub fn from_seconds(seconds: i64) -> Result<Self, OutOfRange> {
        if Self::RANGE.contains(&seconds) {
            Ok(Self(seconds))
        } else {
            Err(OutOfRange {
                value: float_from_i64(seconds),
                range: float_from_i64(*Self::RANGE.start())..=float_from_i64(*Self::RANGE.end()),
            })
        }
    }

    /// Gives seconds since 1970 began, UTC.
    #[must_use]
    pub const fn seconds(self) -> i64 {
        self.0
    }

    /// So much later, to the nearest second; never beyond the end of the range.
    #[must_use]
    pub fn later(self, by: Minutes) -> Self {
        Self::held(self.0.saturating_add(seconds_of(by)))
    }

    /// So much earlier, to the nearest second; never before the beginning of the range.
    #[must_use]
    pub fn earlier(self, by: Minutes) -> Self {
        Self::held(self.0.saturating_sub(seconds_of(by)))
    }

    /// The whole minute it lies in.
    #[must_use]
    pub const fn minute(self) -> Self {
        Self(self.0 - self.0.rem_euclid(60))
    }

    /// How long after `other` it is; no time where it is not, and never more than the range of
    /// [`Minutes`].
    #[must_use]
    pub fn since(self, other: Self) -> Minutes {
        minutes_of(self.0.saturating_sub(other.0))
    }

    /// Seconds from the solver, brought into the range.
    pub(crate) fn held(seconds: i64) -> Self {
        Self(seconds.clamp(*Self::RANGE.start(), *Self::RANGE.end()))
    }
}

/// A length of time in whole seconds.
pub(crate) fn seconds_of(minutes: Minutes) -> i64 {
    i64::from(whole(libm::round(minutes.minutes() * 60.0)))
}

/// Seconds as a length of time: none where they are below zero, at most what there may be.
pub(crate) fn minutes_of(seconds: i64) -> Minutes {
    let most = *Minutes::RANGE.end();
    let seconds = float_from_i64(seconds.max(0));
    Minutes::from_minutes((seconds / 60.0).min(most)).unwrap_or(Minutes::ZERO)
}
