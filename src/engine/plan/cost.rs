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
    pub(super) asleep: i64,
    pub(super) hands: i64,
}

impl CostParts {
    pub(super) const fn hard(self) -> i64 {
        8 * self.past + 4 * self.waits + 2 * self.asleep + self.hands
    }
}

/// Before anything there is, s.
const LONG_AGO: i64 = -1_000_000_000_000;

impl Course {
    /// What a set of times costs; where it is already worse than `bound`, hands are not looked at.
    pub(super) fn cost(&self, lasts: &[i64], falls: &[Slot], bound: i64) -> Cost {
        let mut components = self.parts_but_hands(falls);
        if self.one_pair_of_hands && components.hard() <= bound {
            components.hands = self.hands(falls);
        }
        let off_wish = self
            .legs
            .iter()
            .zip(lasts)
            .filter(|(leg, _)| leg.began.is_none())
            .map(|(leg, lasts)| (lasts - leg.wished).abs())
            .sum();
        Cost {
            hard: components.hard(),
            off_wish,
        }
    }

    /// For how long the same hands are wanted twice.
    fn hands(&self, falls: &[Slot]) -> i64 {
        let pairs = self.legs.iter().zip(falls);
        let mut works = pairs
            .filter(|(leg, _)| leg.began.is_none() && leg.hands > 0)
            .map(|(leg, fall)| at_work(leg, *fall));
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
    fn parts_but_hands(&self, falls: &[Slot]) -> CostParts {
        let mut sum = CostParts::default();
        for (leg, fall) in self.legs.iter().zip(falls) {
            if let Some(began) = leg.began {
                if leg.ended.is_none() {
                    let lasted = fall.ends - began;
                    sum.past += (leg.least - lasted).max(0);
                    sum.waits += (lasted - leg.most).max(0);
                    sum.past += self.now.map_or(0, |now| (now - fall.ends).max(0));
                }
                continue;
            }
            sum.past += (self.floor(leg, falls) - fall.begins).max(0);
            sum.waits += self.waits(leg, falls, fall.begins);
            if leg.hands > 0 {
                sum.asleep += self.asleep_in(leg, *fall);
            }
        }
        sum
    }

    /// The soonest a step can begin: not in the past, and not before what it waits for is over.
    pub(super) fn floor(&self, leg: &Task, falls: &[Slot]) -> i64 {
        let now = self.now.unwrap_or(LONG_AGO);
        let inputs = leg.inputs.iter().filter_map(|input| {
            let before = self.legs.get(*input)?;
            let fall = falls.get(*input)?;
            before.began.map(|_| fall.ends)
        });
        inputs.fold(now, i64::max)
    }

    /// How long what is over waits for this step beyond what it can bear.
    fn waits(&self, leg: &Task, falls: &[Slot], begins: i64) -> i64 {
        let inputs = leg.inputs.iter().filter_map(|input| {
            let (before, fall) = (self.legs.get(*input)?, falls.get(*input)?);
            before.ended?;
            let bears = (before.most - (fall.ends - fall.begins)).max(0);
            let until = fall.ends + bears;
            // What it has waited already cannot be helped.
            let until = self.now.map_or(until, |now| until.max(now));
            Some((begins - until).max(0))
        });
        inputs.max().unwrap_or(0)
    }

    /// How much of a step's work falls into sleep.
    pub(super) fn asleep_in(&self, leg: &Task, fall: Slot) -> i64 {
        let (from, until) = at_work(leg, fall);
        self.asleep
            .iter()
            .map(|(falls_asleep, wakes)| (until.min(*wakes) - from.max(*falls_asleep)).max(0))
            .sum()
    }
}

/// From when to when hands are needed.
pub(super) fn at_work(leg: &Task, fall: Slot) -> (i64, i64) {
    (
        fall.begins,
        fall.begins + leg.hands.min(fall.ends - fall.begins),
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
