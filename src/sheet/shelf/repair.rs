//! Repair: the index made to agree with the records that are really there.

use super::{Shelf, ShelfEntry, Standing};
use crate::sheet::record::{RecordError, read_sheet};
use crate::sheet::{Id, Moment};

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

impl Shelf {
    /// Brings in records the index does not know, and drops entries without a record.
    ///
    /// Starting from an empty index, this makes a lost one anew; what was in the bin is then on
    /// the shelf. Records of entries already known are not opened.
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
