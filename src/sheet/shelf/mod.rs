//! The shelf: an index of all stored formulas, those in the bin included.
//!
//! Two open pages may each change the index. Every entry carries the moment it last changed its
//! place, and [`Shelf::merge`] takes the later of the two: the order of merging does not matter.

mod entry;
mod index;
mod merge;

pub use entry::{ShelfEntry, Slot, Standing};
pub use index::Shelf;
