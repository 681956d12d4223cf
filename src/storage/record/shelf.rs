//! The index of the shelf as a record.

use serde::{Deserialize, Serialize};

use crate::engine::quantity::Mass;
use crate::sheet::{Id, Moment, Sheet, Shelf, ShelfEntry, Slot, Standing};

use super::Record;
use super::error::{RecordError, RecordFault};
use super::read::converted;
use super::text::{List, Name, words};

words! {
    Standing: &[
        (Standing::Shelved, "shelf"),
        (Standing::Binned, "bin"),
        (Standing::Gone, "gone"),
    ];
}

converted! {
    Shelf: ShelfRecord;
    Slot: SlotRecord;
}

/// An index that cannot be read can be rebuilt with [`crate::storage::repair()`].
impl Record for Shelf {
    const KIND: &'static str = "shelf";
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct ShelfRecord {
    #[serde(with = "List::<{ Shelf::MOST }>")]
    entries: Vec<Slot>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct SlotRecord {
    id: Id,
    #[serde(with = "Name::<{ Sheet::NAME_LENGTH }>")]
    name: String,
    /// A sum, stored for display only: a hundred lines of a tonne may exceed the range of a weight.
    #[serde(default)]
    dough_g: f64,
    changed_ms: Moment,
    place: Standing,
    since_ms: Moment,
}

impl From<&Shelf> for ShelfRecord {
    /// Of formulas removed for good only the last few are named.
    fn from(shelf: &Shelf) -> Self {
        let forgotten = forgotten_before(shelf);
        let is_kept =
            |slot: &&Slot| slot.standing != Standing::Gone || slot.since.milliseconds() > forgotten;
        Self {
            entries: shelf.slots().iter().filter(is_kept).cloned().collect(),
        }
    }
}

/// The moment up to which removed formulas are no longer remembered.
fn forgotten_before(shelf: &Shelf) -> f64 {
    let gone = shelf.slots().iter();
    let gone = gone.filter(|slot| slot.standing == Standing::Gone);
    let mut moments: Vec<f64> = gone.map(|slot| slot.since.milliseconds()).collect();
    moments.sort_by(|one, other| other.total_cmp(one));
    moments.get(Shelf::MOST_GONE).copied().unwrap_or(-1.0)
}

impl TryFrom<ShelfRecord> for Shelf {
    type Error = RecordError;

    fn try_from(record: ShelfRecord) -> Result<Self, RecordError> {
        Self::of(record.entries).ok_or_else(|| RecordFault::Twice.at("entries"))
    }
}

impl From<&Slot> for SlotRecord {
    fn from(slot: &Slot) -> Self {
        let entry = &slot.entry;
        Self {
            id: entry.id.clone(),
            name: entry.name.clone(),
            dough_g: entry.dough.grams(),
            changed_ms: entry.changed,
            place: slot.standing,
            since_ms: slot.since,
        }
    }
}

impl From<SlotRecord> for Slot {
    fn from(record: SlotRecord) -> Self {
        Self {
            entry: ShelfEntry {
                id: record.id,
                name: record.name,
                dough: Mass::from_grams(record.dough_g).unwrap_or_default(),
                changed: record.changed_ms,
            },
            standing: record.place,
            since: record.since_ms,
        }
    }
}
