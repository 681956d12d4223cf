//! An entry of the shelf: what is known of a formula without opening it.

use std::cmp::Ordering;

use crate::engine::quantity::Mass;
use crate::sheet::{Id, Moment};

/// What the shelf shows of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct ShelfEntry {
    /// The id it is kept under.
    pub id: Id,
    /// As the user calls it.
    pub name: String,
    /// The weight of its dough, as the formula asks for it.
    pub dough: Mass,
    /// When it was last changed.
    pub changed: Moment,
}

/// Where a formula is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// On the shelf.
    Shelved,
    /// In the bin.
    Binned,
    /// Removed for good; remembered so that another page does not bring it back.
    Gone,
}

/// An entry with its place, and since when it is there.
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
    /// Which of two states of one entry is the later; never equal unless they are the same.
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
