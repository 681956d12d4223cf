//! Unsaved: what was changed and is written after the frame that shows it, once for all changes of
//! that frame.

use std::collections::BTreeMap;
use std::mem;

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::AppState;
use crate::app::browser::clock;
use crate::app::lazy::records;
use crate::text::notice;

/// Writes one record as it is when it is called.
type Write = Box<dyn FnOnce() + Send + Sync>;

/// The writes that are due, by what they write.
#[derive(Clone, Copy, Default)]
pub struct Unsaved {
    due: StoredValue<BTreeMap<&'static str, Write>>,
    /// Whether a frame has been asked for.
    is_asked: StoredValue<bool>,
}

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
        self.unsaved.due.update_value(|due| {
            due.insert(record, write);
        });
        if !self.unsaved.is_asked.get_value() {
            self.unsaved.is_asked.set_value(true);
            clock::after_frame(move || {
                self.unsaved.is_asked.set_value(false);
                self.write_unsaved();
            });
        }
    }

    /// Forgets a write that is due.
    pub(super) fn forget_unsaved(self, record: &'static str) {
        self.unsaved.due.update_value(|due| {
            due.remove(record);
        });
    }

    /// Writes what is due. Where what writes is not loaded yet, it is waited for; where it cannot be
    /// loaded, that is said and the next change tries again.
    pub(super) fn write_unsaved(self) {
        if self.unsaved.due.with_value(BTreeMap::is_empty) {
            return;
        }
        if records::are_here() {
            self.write_now();
        } else {
            spawn_local(async move {
                if records::load().await {
                    self.write_now();
                } else {
                    self.show_toast(notice::not_loaded());
                }
            });
        }
    }

    fn write_now(self) {
        for write in self
            .unsaved
            .due
            .try_update_value(mem::take)
            .unwrap_or_default()
            .into_values()
        {
            write();
        }
    }
}
