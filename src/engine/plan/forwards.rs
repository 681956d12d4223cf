//! The soonest end of a plan that is solved forwards.

use super::course::Course;
use super::search::{Found, search};
use crate::engine::numerics::halve_integers;
use crate::engine::quantity::{Minutes, seconds_of};

/// How often the table is put off, looking for a time that can be kept.
const PUT_OFF: u8 = 40;

/// The soonest table from `table` on at which nothing is in the way; the best there is otherwise.
pub(super) fn forwards(course: &Course, table: i64) -> (i64, Found) {
    let mut at = table;
    let mut here = search(course, at);
    let mut best = (at, here.clone());
    for _ in 0..PUT_OFF {
        if best.1.cost.hard == 0 {
            break;
        }
        let by = put_off_by(course, &here);
        if by <= 0 {
            break;
        }
        let before = at;
        at = at.saturating_add(by);
        here = search(course, at);
        if here.cost.hard < best.1.cost.hard {
            best = (at, here.clone());
        }
        if best.1.cost.hard == 0 {
            return sooner(course, before, best);
        }
    }
    best
}

/// The soonest table after `not_at` and up to the one that was found, to the minute.
fn sooner(course: &Course, not_at: i64, found: (i64, Found)) -> (i64, Found) {
    let (latest, mut best) = found;
    let table = halve_integers(not_at, latest, 60, |table| {
        let tried = search(course, table);
        let possible = tried.cost.hard == 0;
        if possible {
            best = tried;
        }
        possible
    });
    (table, best)
}

/// By how much later the first thing in the way is out of it.
fn put_off_by(course: &Course, found: &Found) -> i64 {
    let mut least = i64::MAX;
    let mut past = 0;
    for (task, slot) in course.tasks.iter().zip(&found.slots) {
        if task.began.is_some() {
            if task.ended.is_none() {
                past = past.max(task.least - (slot.ends - slot.begins));
                past = past.max(course.now.map_or(0, |now| now - slot.ends));
            }
            continue;
        }
        past = past.max(course.earliest(task, &found.slots) - slot.begins);
        if course.work_at_night(task, *slot) > 0 {
            let wakes = course.nights.iter().map(|(_, wakes)| wakes - slot.begins);
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
