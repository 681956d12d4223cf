//! Repairs the index so that it agrees with the stored records.

use super::{Shelf, ShelfEntry, Standing};
use crate::sheet::record::{RecordError, read_sheet};
use crate::sheet::{Id, Moment};

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

impl Shelf {
    /// Adds records that the index does not know and removes entries without a record.
    ///
    /// From an empty index this rebuilds a lost one; what was in the bin is then on the shelf.
    /// Records of known entries are not read.
    #[must_use]
    pub fn repair<'t>(
        self,
        records: impl IntoIterator<Item = (Id, &'t str)>,
        now: Moment,
    ) -> Repaired {
        let mut done = Repaired {
            shelf: self,
            ..Repaired::default()
        };
        let mut there = Vec::new();
        for (id, text) in records {
            if done.shelf.standing_of(&id).is_none() {
                match read_sheet(text) {
                    Ok(sheet) => done.shelf.put(&id, &sheet, now),
                    Err(error) => done.unread.push((id.clone(), error)),
                }
            }
            there.push(id);
        }
        there.sort_unstable();
        let found = |id: &Id| there.binary_search(id).is_ok();
        let slots = done.shelf.slots;
        let (kept, lost): (Vec<_>, Vec<_>) = slots
            .into_iter()
            .partition(|slot| slot.standing == Standing::Gone || found(&slot.entry.id));
        done.shelf = Self { slots: kept };
        done.missing = lost.into_iter().map(|slot| slot.entry).collect();
        done
    }
}
