//! The soonest end of a plan that is solved forwards.

use super::course::Course;
use super::search::{Found, search};
use crate::engine::quantity::{Minutes, seconds_of};

/// How often the table is put off, looking for a time that can be kept.
const PUT_OFF: u8 = 40;

/// The soonest table from `table` on at which nothing is in the way; the best there is otherwise.
pub(super) fn forwards(course: &Course, table: i64) -> (i64, Found) {
    let mut at = table;
    let mut best = (at, search(course, at));
    for _ in 0..PUT_OFF {
        if best.1.cost.hard == 0 {
            break;
        }
        let by = put_off_by(course, &search(course, at));
        if by <= 0 {
            break;
        }
        let before = at;
        at = at.saturating_add(by);
        let found = search(course, at);
        if found.cost.hard < best.1.cost.hard {
            best = (at, found);
        }
        if best.1.cost.hard == 0 {
            return sooner(course, before, best);
        }
    }
    best
}

/// The same, but no later than it must be: to the minute, by halving.
fn sooner(course: &Course, not_at: i64, found: (i64, Found)) -> (i64, Found) {
    let (mut not_at, mut best) = (not_at, found);
    // A night is less than 2^10 minutes.
    for _ in 0..10 {
        let middle = (not_at + best.0).div_euclid(2);
        if best.0 - not_at <= 60 {
            break;
        }
        let tried = search(course, middle);
        if tried.cost.hard == 0 {
            best = (middle, tried);
        } else {
            not_at = middle;
        }
    }
    best
}

/// By how much later the first thing in the way is out of it.
fn put_off_by(course: &Course, found: &Found) -> i64 {
    let mut least = i64::MAX;
    let mut past = 0;
    for (leg, fall) in course.legs.iter().zip(&found.falls) {
        if leg.began.is_some() {
            if leg.ended.is_none() {
                past = past.max(leg.least - (fall.ends - fall.begins));
                past = past.max(course.now.map_or(0, |now| now - fall.ends));
            }
            continue;
        }
        past = past.max(course.floor(leg, &found.falls) - fall.begins);
        if course.asleep_in(leg, *fall) > 0 {
            let wakes = course.asleep.iter().map(|(_, wakes)| wakes - fall.begins);
            least = wakes.filter(|by| *by > 0).fold(least, i64::min);
        }
    }
    if past > 0 {
        past
    } else if least < i64::MAX {
        least
    } else {
        // Hands that are wanted twice, or dough that waits: a quarter of an hour at a time.
        seconds_of(Minutes::from_minutes(15.0).unwrap_or(Minutes::ZERO))
    }
}
