//! Solve: when each step falls, backwards from the table or forwards from now.

use super::change::{Change, changes};
use super::conflict::{Conflict, conflicts};
use super::course::Course;
use super::order::Plan;
use super::search::{Found, search};
use crate::engine::quantity::{Instant, Minutes, minutes_of, seconds_of};

/// What times are found from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Backwards: the bread is on the table then.
    Table(Instant),
    /// Forwards: the work begins then, or as soon after as it can.
    From(Instant),
}

/// From one point in time to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// From then.
    pub from: Instant,
    /// Until then.
    pub until: Instant,
}

/// When a step really was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Done {
    /// Which step of the plan's list.
    pub step: usize,
    /// When it began.
    pub began: Instant,
    /// When it ended; `None` while it is under way.
    pub ended: Option<Instant>,
}

/// What surrounds a plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Around {
    /// When the baker sleeps: no work then, but dough may wait.
    pub asleep: Vec<Span>,
    /// Now: what is not begun cannot begin before; `None` for a plan that is only thought of.
    pub now: Option<Instant>,
    /// What has really been done.
    pub done: Vec<Done>,
    /// Whether there is but one pair of hands.
    pub one_pair_of_hands: bool,
}

/// When a step falls.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timed {
    /// It begins.
    pub begins: Instant,
    /// It is over.
    pub ends: Instant,
    /// How long it lasts.
    pub lasts: Minutes,
    /// Until when hands are needed.
    pub hands_until: Instant,
}

/// A plan with its times.
#[derive(Clone, Debug, PartialEq)]
pub struct Solved {
    /// Step by step, in the order of the plan's list.
    pub steps: Vec<Timed>,
    /// When the first begins.
    pub begins: Instant,
    /// When the bread is on the table.
    pub table: Instant,
    /// What cannot be kept.
    pub conflicts: Vec<Conflict>,
    /// What solves it, each by itself; none where nothing is in the way.
    pub changes: Vec<Change>,
}

/// How often the table is put off, looking for a time that can be kept.
const PUT_OFF: u8 = 40;

/// Finds when each step falls.
///
/// Backwards, every step is as late as it can be. A step that gives is lengthened or shortened
/// where its wish would bring work into sleep, two works onto one pair of hands, or the beginning
/// into the past. Forwards, the table is the soonest at which nothing begins before now; where
/// work would fall into sleep it is put off until it does not.
#[must_use]
pub fn solve(plan: &Plan, aim: Aim, around: &Around) -> Solved {
    let around = match aim {
        Aim::Table(_) => around.clone(),
        // Nothing begins before it is begun.
        Aim::From(start) => Around {
            now: Some(around.now.map_or(start, |now| now.max(start))),
            ..around.clone()
        },
    };
    let course = Course::of(plan, &around);
    let (table, found) = match aim {
        Aim::Table(table) => (table.seconds(), search(&course, table.seconds())),
        Aim::From(start) => {
            let now = around.now.unwrap_or(start).seconds();
            forwards(&course, course.soonest(&course.settings(), now))
        }
    };
    let conflicts = conflicts(&course, &found);
    let changes = if conflicts.is_empty() {
        Vec::new()
    } else {
        changes(&course, table)
    };
    let steps: Vec<Timed> = found
        .falls
        .iter()
        .zip(&course.legs)
        .map(|(fall, leg)| Timed {
            begins: Instant::held(fall.begins),
            ends: Instant::held(fall.ends),
            lasts: minutes_of(fall.ends - fall.begins),
            hands_until: Instant::held(fall.begins + leg.hands.min(fall.ends - fall.begins)),
        })
        .collect();
    let first = found.falls.iter().map(|fall| fall.begins).min();
    Solved {
        steps,
        begins: Instant::held(first.unwrap_or(table)),
        table: Instant::held(table),
        conflicts,
        changes,
    }
}

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

/// The plan with the lengths that were found as its settings, so that solving it again from either
/// end leaves them as they are.
#[must_use]
pub fn keeping(plan: &Plan, solved: &Solved) -> Plan {
    let mut steps = plan.clone().into_steps();
    for (step, timed) in steps.iter_mut().zip(&solved.steps) {
        step.lasts = step.lasts.wishing(timed.lasts);
    }
    Plan::of(steps).unwrap_or_else(|_| plan.clone())
}
