//! An entry of the shelf: the summary of a stored formula.

use std::cmp::Ordering;

use crate::engine::quantity::Mass;
use crate::sheet::{Id, Moment};

/// The summary of a stored formula.
#[derive(Clone, Debug, PartialEq)]
pub struct ShelfEntry {
    /// Its id.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Dough weight of the formula.
    pub dough: Mass,
    /// When it was last changed.
    pub changed: Moment,
}

/// State of an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// On the shelf.
    Shelved,
    /// In the bin.
    Binned,
    /// Deleted for good; recorded so that another tab does not restore it.
    Gone,
}

/// An entry with its state and the time of its last change of state.
#[derive(Clone, Debug, PartialEq)]
pub struct Slot {
    /// The entry.
    pub entry: ShelfEntry,
    /// Where the formula is.
    pub standing: Standing,
    /// Since when.
    pub since: Moment,
}

impl Slot {
    /// Orders two states of one entry by time; equal only if they are the same.
    pub(super) fn age(&self, other: &Self) -> Ordering {
        let ms = |moment: Moment| moment.milliseconds();
        let (mine, theirs) = (&self.entry, &other.entry);
        ms(self.since)
            .total_cmp(&ms(other.since))
            .then(self.standing.cmp(&other.standing))
            .then(ms(mine.changed).total_cmp(&ms(theirs.changed)))
            .then_with(|| mine.name.cmp(&theirs.name))
            .then(mine.dough.grams().total_cmp(&theirs.dough.grams()))
    }
}
