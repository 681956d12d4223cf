//! Repair: the index of the shelf made to agree with the records that are really there.

use crate::sheet::{Id, Moment, Sheet, Shelf, ShelfEntry, Standing};

use super::record::{Record, RecordError};

/// An index that agrees with the records, and what was found on the way.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Repaired {
    /// The index.
    pub shelf: Shelf,
    /// Records that cannot be opened. They are not in the index, and are to be left as they are.
    pub unread: Vec<(Id, RecordError)>,
    /// Entries whose record is no longer there.
    pub missing: Vec<ShelfEntry>,
}

/// Brings in records the index does not know, and drops entries without a record.
///
/// Starting from an empty index, this makes a lost one anew; what was in the bin is then on the
/// shelf. Records of entries already known are not opened.
#[must_use]
pub fn repair<'t>(
    mut shelf: Shelf,
    records: impl IntoIterator<Item = (Id, &'t str)>,
    now: Moment,
) -> Repaired {
    let mut unread = Vec::new();
    let mut there = Vec::new();
    for (id, text) in records {
        if shelf.standing_of(&id).is_none() {
            match Sheet::read(text) {
                Ok(sheet) => shelf.put(&id, &sheet, now),
                Err(error) => unread.push((id.clone(), error)),
            }
        }
        there.push(id);
    }
    there.sort_unstable();
    let found = |id: &Id| there.binary_search(id).is_ok();
    let missing = shelf.retain(|slot| slot.standing == Standing::Gone || found(&slot.entry.id));
    Repaired {
        shelf,
        unread,
        missing,
    }
}
