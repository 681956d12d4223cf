//! Nights: hours of sleep by the local clock.

use super::clock::Clock;
use super::zone::Zone;
use crate::engine::plan::Span;
use crate::engine::quantity::Instant;

/// The most nights that are looked at.
const MOST: i64 = 62;

/// Every night that touches the time from `from` to `until`, falling asleep and waking by the
/// clock; none where the two are the same.
///
/// An hour that clocks put back is slept twice, one they put forward not at all.
#[must_use]
pub fn nights(zone: &Zone, asleep: (Clock, Clock), from: Instant, until: Instant) -> Vec<Span> {
    let (falls_asleep, wakes) = asleep;
    if falls_asleep == wakes {
        return Vec::new();
    }
    let first = zone.civil(from).date.plus(-1);
    let last = zone.civil(until).date;
    let count = (last.days() - first.days()).min(MOST);
    let mut found = Vec::new();
    for night in 0..=count {
        let date = first.plus(night);
        let next = if wakes <= falls_asleep {
            date.plus(1)
        } else {
            date
        };
        let span = Span {
            from: zone.instant(date, falls_asleep).first(),
            until: zone.instant(next, wakes).last(),
        };
        if span.until > from && span.from < until {
            found.push(span);
        }
    }
    found
}
