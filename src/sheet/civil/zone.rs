//! Zone: what the clock on the wall shows at a point in time, and back.

use super::clock::Clock;
use super::date::Date;
use crate::engine::numerics::{halve_integers, whole};
use crate::engine::quantity::{Instant, Minutes};

const DAY: i64 = 86_400;

/// What calendar and clock show.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Civil {
    /// The date.
    pub date: Date,
    /// The time of day, to the minute.
    pub clock: Clock,
    /// The seconds beyond the minute.
    pub second: u16,
}

/// What a date and a clock stand for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Met {
    /// One point in time.
    Once(Instant),
    /// Two: clocks were put back over it.
    Twice(Instant, Instant),
    /// None: clocks were put forward over it; the point at which they were.
    Never(Instant),
}

/// A zone, as a table: from when on, and how many seconds the clock is ahead of UTC.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Zone {
    first: i64,
    changes: Vec<(i64, i64)>,
}

/// How far apart offsets are asked for, s: half a day; two changes are never that near.
const STRIDE: i64 = 43_200;
/// How far around a point in time the offset is asked for, days.
const AROUND_DAYS: f64 = 60.0;
/// Offsets outside this range count as UTC, s.
const FARTHEST: i64 = 64_800;

impl Zone {
    /// The same offset for ever, in minutes ahead of UTC.
    #[must_use]
    pub const fn fixed(minutes: i64) -> Self {
        Self {
            first: minutes * 60,
            changes: Vec::new(),
        }
    }

    /// Asks for the offset, in minutes ahead of UTC, at points between two, and finds each change
    /// to the second.
    ///
    /// `offset` is the browser's: the only one who knows the rules of all zones.
    #[must_use]
    pub fn asked(from: Instant, until: Instant, offset: impl Fn(Instant) -> i64) -> Self {
        let ahead = |seconds: i64| {
            let seconds = offset(Instant::held(seconds)).saturating_mul(60);
            if (-FARTHEST..=FARTHEST).contains(&seconds) {
                seconds
            } else {
                0
            }
        };
        let first = ahead(from.seconds());
        let mut zone = Self {
            first,
            changes: Vec::new(),
        };
        let (mut at, mut now) = (from.seconds(), first);
        while at < until.seconds() {
            let next = (at + STRIDE).min(until.seconds());
            let then = ahead(next);
            if then != now {
                zone.changes.push((change(at, next, now, &ahead), then));
                now = then;
            }
            at = next;
        }
        zone
    }

    /// Asks for the offset within sixty days around a point in time.
    #[must_use]
    pub fn around(at: Instant, offset: impl Fn(Instant) -> i64) -> Self {
        let days = Minutes::from_hours(AROUND_DAYS * 24.0).unwrap_or(Minutes::ZERO);
        Self::asked(at.earlier(days), at.later(days), offset)
    }

    /// Seconds the clock is ahead of UTC then.
    #[must_use]
    pub fn ahead(&self, at: Instant) -> i64 {
        let before = self.changes.iter().rev();
        let mut before = before.filter(|(from, _)| *from <= at.seconds());
        before.next().map_or(self.first, |(_, ahead)| *ahead)
    }

    /// What calendar and clock show then.
    #[must_use]
    pub fn civil(&self, at: Instant) -> Civil {
        let local = at.seconds() + self.ahead(at);
        let of_day = local.rem_euclid(DAY);
        let minutes = u16::try_from(of_day.div_euclid(60)).unwrap_or(0);
        Civil {
            date: Date::from_days(local.div_euclid(DAY)),
            clock: Clock::from_minutes(minutes).unwrap_or_default(),
            second: u16::try_from(of_day.rem_euclid(60)).unwrap_or(0),
        }
    }

    /// What a date and a clock stand for.
    #[must_use]
    pub fn instant(&self, date: Date, clock: Clock) -> Met {
        let local = date.days() * DAY + i64::from(clock.minutes()) * 60;
        let mut found: Vec<Instant> = Vec::new();
        for ahead in self.offsets() {
            let at = Instant::held(local - ahead);
            if self.ahead(at) == ahead && !found.contains(&at) {
                found.push(at);
            }
        }
        found.sort_unstable();
        match found.as_slice() {
            [] => Met::Never(self.jump_over(local)),
            [only] => Met::Once(*only),
            [first, second, ..] => Met::Twice(*first, *second),
        }
    }

    fn offsets(&self) -> impl Iterator<Item = i64> {
        let later = self.changes.iter().map(|(_, ahead)| *ahead);
        std::iter::once(self.first).chain(later)
    }

    /// The point at which clocks were put forward over `local`.
    fn jump_over(&self, local: i64) -> Instant {
        let mut before = self.first;
        for (from, ahead) in &self.changes {
            if (from + before..from + ahead).contains(&local) {
                return Instant::held(*from);
            }
            before = *ahead;
        }
        Instant::held(local - before)
    }
}

impl Met {
    /// The point in time that is meant: the first of two, and the jump where there is none.
    #[must_use]
    pub const fn first(self) -> Instant {
        match self {
            Self::Once(at) | Self::Twice(at, _) | Self::Never(at) => at,
        }
    }

    /// The same, but the second of two: for waking, and for a table that is not to be early.
    #[must_use]
    pub const fn last(self) -> Instant {
        match self {
            Self::Once(at) | Self::Twice(_, at) | Self::Never(at) => at,
        }
    }
}

/// A browser's offset, in minutes behind UTC, as whole minutes ahead of it; none for what no clock
/// has.
#[must_use]
pub fn ahead_of(minutes_behind: f64) -> i64 {
    let size = i64::from(whole(libm::round(minutes_behind.abs())));
    if minutes_behind > 0.0 { -size } else { size }
}

/// The first second after `low` at which the offset is no longer `now`; it is not at `high`.
fn change(low: i64, high: i64, now: i64, ahead: &impl Fn(i64) -> i64) -> i64 {
    halve_integers(low, high, 1, |at| ahead(at) != now)
}
