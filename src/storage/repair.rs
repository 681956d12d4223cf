//! Repairs the index so that it agrees with the stored records.

use crate::sheet::{Id, Moment, Sheet, Shelf, ShelfEntry, Standing};

use super::record::{Record, RecordError};

/// A repaired index and what was found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Repaired {
    /// The index.
    pub shelf: Shelf,
    /// Records that cannot be read. They are not in the index; leave them untouched.
    pub unread: Vec<(Id, RecordError)>,
    /// Entries without a record.
    pub missing: Vec<ShelfEntry>,
}

/// Adds records that the index does not know and removes entries without a record.
///
/// From an empty index this rebuilds a lost one; what was in the bin is then on the shelf. Records
/// of known entries are not read.
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
