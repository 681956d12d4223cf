//! Solve: when each step falls, backwards from the table or forwards from now.

use super::change::{Change, changes};
use super::conditions::Around;
use super::conflict::{Conflict, conflicts};
use super::course::Course;
use super::forwards::forwards;
use super::order::Plan;
use super::search::{Found, search};
use super::step::StepKind;
use crate::engine::quantity::{Instant, Minutes, minutes_of};

/// What times are found from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Backwards: the bread is on the table then.
    Table(Instant),
    /// Forwards: the work begins then, or as soon after as it can.
    From(Instant),
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
}

/// Finds when each step falls.
///
/// Backwards, every step is as late as it can be. A step that gives is lengthened or shortened
/// where its wish would bring work into sleep, two works onto one pair of hands, or the beginning
/// into the past. Forwards, the table is the soonest at which nothing begins before now; where
/// work would fall into sleep it is put off until it does not.
#[must_use]
pub fn solve(plan: &Plan, aim: Aim, around: &Around) -> Solved {
    let around = begun(aim, around);
    let course = Course::of(plan, &around);
    let (table, found) = slotted(&course, aim, &around);
    let conflicts = conflicts(&course, &found);
    let steps: Vec<Timed> = found
        .slots
        .iter()
        .zip(&course.tasks)
        .map(|(slot, task)| Timed {
            begins: Instant::held(slot.begins),
            ends: Instant::held(slot.ends),
            lasts: minutes_of(slot.ends - slot.begins),
            hands_until: Instant::held(slot.begins + task.hands.min(slot.ends - slot.begins)),
        })
        .collect();
    let first = found.slots.iter().map(|slot| slot.begins).min();
    Solved {
        steps,
        begins: Instant::held(first.unwrap_or(table)),
        table: Instant::held(table),
        conflicts,
    }
}

/// Returns what solves the conflicts of a plan, each change by itself; nothing where there are
/// none. It searches the plan many times over, and so takes some twenty times as long as [`solve`].
#[must_use]
pub fn solutions(plan: &Plan, aim: Aim, around: &Around) -> Vec<Change> {
    let around = begun(aim, around);
    let course = Course::of(plan, &around);
    let (table, found) = slotted(&course, aim, &around);
    if conflicts(&course, &found).is_empty() {
        return Vec::new();
    }
    let found = changes(&course, table).into_iter();
    found.filter(|change| !cools_faster(plan, change)).collect()
}

/// The time on the table, and the slots of the steps.
fn slotted(course: &Course, aim: Aim, around: &Around) -> (i64, Found) {
    match aim {
        Aim::Table(table) => (table.seconds(), search(course, table.seconds())),
        Aim::From(start) => {
            let now = around.now.unwrap_or(start).seconds();
            forwards(course, course.soonest(&course.settings(), now))
        }
    }
}

/// The same surroundings, in which nothing begins before it is begun.
fn begun(aim: Aim, around: &Around) -> Around {
    let now = match aim {
        Aim::Table(_) => around.now,
        Aim::From(start) => Some(around.now.map_or(start, |now| now.max(start))),
    };
    Around {
        now,
        ..around.clone()
    }
}

/// Whether a change asks bread to cool faster than it does.
fn cools_faster(plan: &Plan, change: &Change) -> bool {
    let Change::LetLast {
        step,
        longer: false,
        ..
    } = change
    else {
        return false;
    };
    let step = plan.steps().get(*step);
    step.is_some_and(|step| step.at.work == StepKind::Cool)
}
