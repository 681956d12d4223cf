//! Unsaved: what was changed and is written after the frame that shows it, once for all changes of
//! that frame.

use std::collections::BTreeMap;
use std::mem;

use leptos::prelude::*;

use super::AppState;
use crate::app::browser::clock;

/// Writes one record as it is when it is called.
type Write = Box<dyn FnOnce() + Send + Sync>;

/// The writes that are due, by what they write.
#[derive(Clone, Copy, Default)]
pub struct Unsaved(StoredValue<BTreeMap<&'static str, Write>>);

impl AppState {
    /// Writes a record after the next frame, or when the page is left. A later write of the same
    /// record takes the place of an earlier one.
    pub(super) fn write_later(
        self,
        record: &'static str,
        write: impl FnOnce() + Send + Sync + 'static,
    ) {
        self.put_unsaved(record, Box::new(write));
    }

    fn put_unsaved(self, record: &'static str, write: Write) {
        let is_first = self.unsaved.0.try_update_value(|due| {
            let is_first = due.is_empty();
            due.insert(record, write);
            is_first
        });
        if is_first.unwrap_or_default() {
            clock::after_frame(move || self.write_unsaved());
        }
    }

    /// Forgets a write that is due.
    pub(super) fn forget_unsaved(self, record: &'static str) {
        self.unsaved.0.update_value(|due| {
            due.remove(record);
        });
    }

    /// Writes what is due.
    pub(super) fn write_unsaved(self) {
        for write in self
            .unsaved
            .0
            .try_update_value(mem::take)
            .unwrap_or_default()
            .into_values()
        {
            write();
        }
    }
}
