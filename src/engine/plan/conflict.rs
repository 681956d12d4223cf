//! Conflicts: what of a plan cannot be kept.

use super::cost::both;
use super::course::Course;
use super::search::Found;
use crate::engine::quantity::{Instant, Minutes, minutes_of};

/// Something that cannot be kept. Steps are named by their place in the plan's list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Conflict {
    /// A step would have to begin before now, or before what it waits for is over.
    TooLate {
        /// Which step.
        step: usize,
        /// By how much.
        by: Minutes,
    },
    /// What is over, or under way, waits longer than it can bear.
    Waits {
        /// Which step is over and waits.
        step: usize,
        /// By how much too long.
        by: Minutes,
    },
    /// `StepKind` falls into sleep.
    AtNight {
        /// Which step.
        step: usize,
        /// When its work begins.
        begins: Instant,
        /// When the baker wakes.
        wakes: Instant,
    },
    /// Two steps want the same pair of hands.
    HandsFull {
        /// Which step.
        step: usize,
        /// Which other.
        other: usize,
        /// For how long.
        by: Minutes,
    },
}

/// Everything that cannot be kept in these times.
pub(super) fn conflicts(course: &Course, found: &Found) -> Vec<Conflict> {
    if found.cost.hard == 0 {
        return Vec::new();
    }
    let mut all = Vec::new();
    for (step, (task, slot)) in course.tasks.iter().zip(&found.slots).enumerate() {
        if task.began.is_some() {
            if task.ended.is_none() {
                let lasted = slot.ends - slot.begins;
                let past = course.now.map_or(0, |now| now - slot.ends);
                late(&mut all, step, (task.least - lasted).max(past));
                waits(&mut all, step, lasted - task.most);
            }
            continue;
        }
        late(
            &mut all,
            step,
            course.earliest(task, &found.slots) - slot.begins,
        );
        for input in &task.inputs {
            let before = course.tasks.get(*input).zip(found.slots.get(*input));
            if let Some((before, over)) = before
                && before.ended.is_some()
            {
                let bears = (before.most - (over.ends - over.begins)).max(0);
                let until = course
                    .now
                    .map_or(over.ends + bears, |now| now.max(over.ends + bears));
                waits(&mut all, *input, slot.begins - until);
            }
        }
        at_night(course, found, step, &mut all);
        hands_full(course, found, step, &mut all);
    }
    only_the_latest(all)
}

/// Of steps that are too late only the one by the most: the others are late because of it.
fn only_the_latest(mut all: Vec<Conflict>) -> Vec<Conflict> {
    let late = |conflict: &Conflict| match conflict {
        Conflict::TooLate { by, .. } => Some(by.minutes()),
        Conflict::Waits { .. } | Conflict::AtNight { .. } | Conflict::HandsFull { .. } => None,
    };
    let most = all.iter().filter_map(late).fold(0.0, f64::max);
    let mut told = false;
    all.retain(|conflict| match late(conflict) {
        Some(by) if by < most || told => false,
        Some(_) => {
            told = true;
            true
        }
        None => true,
    });
    all
}

fn late(all: &mut Vec<Conflict>, step: usize, by: i64) {
    if by > 0 {
        let by = minutes_of(by);
        all.push(Conflict::TooLate { step, by });
    }
}

fn waits(all: &mut Vec<Conflict>, step: usize, by: i64) {
    if by > 0 {
        let by = minutes_of(by);
        all.push(Conflict::Waits { step, by });
    }
}

fn at_night(course: &Course, found: &Found, step: usize, all: &mut Vec<Conflict>) {
    let (Some(task), Some(slot)) = (course.tasks.get(step), found.slots.get(step)) else {
        return;
    };
    if course.work_at_night(task, *slot) <= 0 {
        return;
    }
    let wakes = course.nights.iter().map(|(_, wakes)| *wakes);
    if let Some(wakes) = wakes.filter(|wakes| *wakes > slot.begins).min() {
        all.push(Conflict::AtNight {
            step,
            begins: Instant::held(slot.begins),
            wakes: Instant::held(wakes),
        });
    }
}

fn hands_full(course: &Course, found: &Found, step: usize, all: &mut Vec<Conflict>) {
    if !course.one_pair_of_hands {
        return;
    }
    let mut numbered = course.tasks.iter().zip(&found.slots).enumerate().skip(step);
    let Some((_, (task, slot))) = numbered.next() else {
        return;
    };
    for (other, (there, slots)) in numbered {
        let by = both(task, *slot, there, *slots);
        if by > 0 {
            let by = minutes_of(by);
            all.push(Conflict::HandsFull { step, other, by });
        }
    }
}
