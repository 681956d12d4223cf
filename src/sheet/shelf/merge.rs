//! Merging two indexes: for each formula the later of its two states.

use std::cmp::Ordering;
use std::iter::Peekable;
use std::vec::IntoIter;

use super::{Shelf, Slot};

impl Shelf {
    /// Merges this index with another.
    ///
    /// Commutative, associative and idempotent.
    #[must_use]
    pub fn merge(self, other: Self) -> Self {
        let mut mine = self.slots.into_iter().peekable();
        let mut theirs = other.slots.into_iter().peekable();
        let next = || next_slot(&mut mine, &mut theirs);
        Self {
            slots: std::iter::from_fn(next).collect(),
        }
    }
}

/// Takes the slot with the lowest id of both; the later state if both have it.
fn next_slot(
    mine: &mut Peekable<IntoIter<Slot>>,
    theirs: &mut Peekable<IntoIter<Slot>>,
) -> Option<Slot> {
    let order = match (mine.peek(), theirs.peek()) {
        (Some(one), Some(other)) => one.entry.id.cmp(&other.entry.id),
        (_, None) => Ordering::Less,
        (None, _) => Ordering::Greater,
    };
    match order {
        Ordering::Less => mine.next(),
        Ordering::Greater => theirs.next(),
        Ordering::Equal => {
            let (one, other) = (mine.next()?, theirs.next()?);
            Some(if one.age(&other).is_ge() { one } else { other })
        }
    }
}
