//! Cost: how far a set of times is from being one that can be kept.

use super::course::{Course, Slot, Task};

/// What is wrong with a set of times, in seconds. The less, in this order, the better.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Cost {
    /// All that cannot be kept, weighed: the past most, then dough that waits, then sleep, then
    /// hands that are not there.
    pub(super) hard: i64,
    /// How far lengths are from what is wished.
    pub(super) off_wish: i64,
}

/// The same, apart.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct CostParts {
    pub(super) past: i64,
    pub(super) waits: i64,
    pub(super) at_night: i64,
    pub(super) hands: i64,
}

impl CostParts {
    pub(super) const fn hard(self) -> i64 {
        8 * self.past + 4 * self.waits + 2 * self.at_night + self.hands
    }
}

/// Before anything there is, s.
const LONG_AGO: i64 = -1_000_000_000_000;

impl Course {
    /// What a set of times costs; where it is already worse than `bound`, hands are not looked at.
    pub(super) fn cost(&self, lasts: &[i64], slots: &[Slot], bound: i64) -> Cost {
        let mut components = self.parts_but_hands(slots);
        if self.one_pair_of_hands && components.hard() <= bound {
            components.hands = self.hands(slots);
        }
        let off_wish = self
            .tasks
            .iter()
            .zip(lasts)
            .filter(|(task, _)| task.began.is_none())
            .map(|(task, lasts)| (lasts - task.wished).abs())
            .sum();
        Cost {
            hard: components.hard(),
            off_wish,
        }
    }

    /// For how long the same hands are wanted twice.
    fn hands(&self, slots: &[Slot]) -> i64 {
        let pairs = self.tasks.iter().zip(slots);
        let mut works = pairs
            .filter(|(task, _)| task.began.is_none() && task.hands > 0)
            .map(|(task, slot)| at_work(task, *slot));
        let mut sum = 0;
        while let Some((from, until)) = works.next() {
            let later = works.clone();
            sum += later
                .map(|(begins, ends)| (until.min(ends) - from.max(begins)).max(0))
                .sum::<i64>();
        }
        sum
    }

    /// What is wrong with a set of times, apart, but for hands.
    fn parts_but_hands(&self, slots: &[Slot]) -> CostParts {
        let mut sum = CostParts::default();
        for (task, slot) in self.tasks.iter().zip(slots) {
            if let Some(began) = task.began {
                if task.ended.is_none() {
                    let lasted = slot.ends - began;
                    sum.past += (task.least - lasted).max(0);
                    sum.waits += (lasted - task.most).max(0);
                    sum.past += self.now.map_or(0, |now| (now - slot.ends).max(0));
                }
                continue;
            }
            sum.past += (self.earliest(task, slots) - slot.begins).max(0);
            sum.waits += self.waits(task, slots, slot.begins);
            if task.hands > 0 {
                sum.at_night += self.work_at_night(task, *slot);
            }
        }
        sum
    }

    /// The soonest a step can begin: not in the past, and not before what it waits for is over.
    pub(super) fn earliest(&self, task: &Task, slots: &[Slot]) -> i64 {
        let now = self.now.unwrap_or(LONG_AGO);
        let inputs = task.inputs.iter().filter_map(|input| {
            let before = self.tasks.get(*input)?;
            let slot = slots.get(*input)?;
            before.began.map(|_| slot.ends)
        });
        inputs.fold(now, i64::max)
    }

    /// How long what is over waits for this step beyond what it can bear.
    fn waits(&self, task: &Task, slots: &[Slot], begins: i64) -> i64 {
        let inputs = task.inputs.iter().filter_map(|input| {
            let (before, slot) = (self.tasks.get(*input)?, slots.get(*input)?);
            before.ended?;
            let bears = (before.most - (slot.ends - slot.begins)).max(0);
            let until = slot.ends + bears;
            // What it has waited already cannot be helped.
            let until = self.now.map_or(until, |now| until.max(now));
            Some((begins - until).max(0))
        });
        inputs.max().unwrap_or(0)
    }

    /// How much of a step's work falls into sleep.
    pub(super) fn work_at_night(&self, task: &Task, slot: Slot) -> i64 {
        let (from, until) = at_work(task, slot);
        self.nights
            .iter()
            .map(|(night_begins, wakes)| (until.min(*wakes) - from.max(*night_begins)).max(0))
            .sum()
    }
}

/// From when to when hands are needed.
pub(super) fn at_work(task: &Task, slot: Slot) -> (i64, i64) {
    (
        slot.begins,
        slot.begins + task.hands.min(slot.ends - slot.begins),
    )
}

/// How long both need hands.
pub(super) fn both(one: &Task, here: Slot, other: &Task, there: Slot) -> i64 {
    if other.began.is_some() {
        return 0;
    }
    let (one, other) = (at_work(one, here), at_work(other, there));
    (one.1.min(other.1) - one.0.max(other.0)).max(0)
}
