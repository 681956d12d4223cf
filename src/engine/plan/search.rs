//! Search: how long each step that gives should last, so that the times can be kept.

use super::cost::{Cost, at_work};
use super::course::{Course, Slot, Task};

/// Times that were found, and what they cost.
#[derive(Clone, Debug)]
pub(super) struct Found {
    pub(super) lasts: Vec<i64>,
    pub(super) slots: Vec<Slot>,
    pub(super) cost: Cost,
}

/// How often all steps that give are gone through.
const ROUNDS: u8 = 4;

/// The lengths nearest to what is wished with which all is over at `table`.
///
/// One step that gives after the other is tried at the lengths at which some work just misses
/// sleep, other work, or what has been done; the best is kept, and all are gone through again. With
/// one step that gives nothing better is missed, with two hardly ever: `tests/total/plan_by_force.rs`.
pub(super) fn search(course: &Course, table: i64) -> Found {
    let settings = course.settings();
    let mut best = improved(course, table, settings);
    // Steps that give in a row can stand in each other's way: begin again from both ends.
    let ends: [fn(&Task) -> i64; 2] = [|task| task.least, |task| task.most];
    for end in ends {
        if best.cost.hard == 0 {
            break;
        }
        let other = improved(course, table, course.tasks.iter().map(end).collect());
        if other.cost < best.cost {
            best = other;
        }
    }
    best
}

/// The best lengths that are found from these on.
fn improved(course: &Course, table: i64, lasts: Vec<i64>) -> Found {
    let mut slots = Vec::new();
    course.fill_slots(&lasts, table, &mut slots);
    let cost = course.cost(&lasts, &slots, i64::MAX);
    let mut best = Found { lasts, slots, cost };
    for _ in 0..ROUNDS {
        if best.cost == Cost::default() {
            break;
        }
        let before = best.cost;
        for place in (0..course.tasks.len()).rev() {
            if course.is_flexible(place) {
                try_lengths(course, table, place, &mut best);
            }
        }
        if best.cost == before {
            break;
        }
    }
    best
}

fn try_lengths(course: &Course, table: i64, place: usize, best: &mut Found) {
    let mut tried = best.lasts.clone();
    let mut slots = Vec::with_capacity(tried.len());
    let wished = course.tasks.get(place).map_or(0, |task| task.wished);
    let off = |lasts: &[i64]| lasts.get(place).map_or(0, |own| (own - wished).abs());
    for length in lengths(course, place, best) {
        // What can be kept is only bettered by what is nearer to the wish.
        if best.cost.hard == 0 && (length - wished).abs() >= off(&best.lasts) {
            continue;
        }
        if let Some(own) = tried.get_mut(place) {
            *own = length;
        }
        course.fill_slots(&tried, table, &mut slots);
        let cost = course.cost(&tried, &slots, best.cost.hard);
        if cost < best.cost {
            *best = Found {
                lasts: tried.clone(),
                slots: slots.clone(),
                cost,
            };
        }
    }
}

/// When what is under way, gives, and is waited for may be over: at its least, and at its most.
fn limits_under_way<'c>(course: &'c Course, task: &'c Task) -> impl Iterator<Item = i64> + 'c {
    let inputs = task.inputs.iter().filter_map(|input| {
        let before = course.tasks.get(*input)?;
        let began = before.began.filter(|_| before.ended.is_none())?;
        let least = began.saturating_add(before.least);
        let soonest = course.now.map_or(least, |now| now.max(least));
        Some([soonest, began.saturating_add(before.most)])
    });
    inputs.flatten()
}

/// The lengths worth trying: limits, wish, and each at which some work that moves with the step
/// just misses sleep, other work, or what has been done.
fn lengths(course: &Course, place: usize, now: &Found) -> Vec<i64> {
    let Some(task) = course.tasks.get(place) else {
        return Vec::new();
    };
    let own = now.lasts.get(place).copied().unwrap_or(task.wished);
    let moves = course.before(place);
    let mut longer_by: Vec<i64> = Vec::new();
    let all = || course.tasks.iter().zip(&now.slots);
    for ((mover, slot), moves) in all().zip(&moves) {
        if !moves || mover.began.is_some() {
            continue;
        }
        let (from, until) = at_work(mover, *slot);
        longer_by.push(from - course.earliest(mover, &now.slots));
        longer_by.extend(limits_under_way(course, mover).map(|limit| from - limit));
        if mover.hands == 0 {
            continue;
        }
        for (night_begins, wakes) in &course.nights {
            longer_by.extend([until - night_begins, from - wakes]);
        }
        if course.one_pair_of_hands {
            for (other, there) in all() {
                let (begins, ends) = at_work(other, *there);
                if ends > begins {
                    longer_by.extend([until - begins, from - ends]);
                }
            }
        }
    }
    let mut lengths: Vec<i64> = longer_by.iter().map(|by| own + by).collect();
    lengths.retain(|length| (task.least..=task.most).contains(length));
    lengths.extend([task.least, task.wished, task.most]);
    lengths.sort_unstable();
    lengths.dedup();
    lengths
}
