//! Unsaved: what was changed and has still to be written.

use std::collections::BTreeMap;
use std::mem;

use leptos::prelude::*;

/// Writes one record as it is when it is called.
pub(super) type Write = Box<dyn FnOnce() + Send + Sync>;

/// The writes that are due, by what they write.
#[derive(Clone, Copy, Default)]
pub struct Unsaved(StoredValue<BTreeMap<&'static str, Write>>);

impl Unsaved {
    /// Adds a write, in place of an earlier one of the same record.
    pub(super) fn add(self, record: &'static str, write: Write) {
        self.0.update_value(|due| {
            due.insert(record, write);
        });
    }

    /// Forgets a write.
    pub(super) fn forget(self, record: &'static str) {
        self.0.update_value(|due| {
            due.remove(record);
        });
    }

    /// Whether nothing is due.
    pub(super) fn is_empty(self) -> bool {
        self.0.with_value(BTreeMap::is_empty)
    }

    /// Writes what is due.
    pub(super) fn write(self) {
        let due = self.0.try_update_value(mem::take);
        for write in due.unwrap_or_default().into_values() {
            write();
        }
    }
}
