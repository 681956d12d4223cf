//! Writing after the frame that shows a change, once for all changes of that frame.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::AppState;
use super::unsaved::Write;
use crate::app::browser::clock;
use crate::app::lazy::records;
use crate::text::notice;

impl AppState {
    /// Writes a record after the next frame, or when the page is left. A later write of the same
    /// record takes the place of an earlier one.
    pub(super) fn write_later(
        self,
        record: &'static str,
        write: impl FnOnce() + Send + Sync + 'static,
    ) {
        self.add_unsaved(record, Box::new(write));
    }

    fn add_unsaved(self, record: &'static str, write: Write) {
        self.unsaved.add(record, write);
        if !self.is_write_asked.get_value() {
            self.is_write_asked.set_value(true);
            clock::after_frame(move || {
                self.is_write_asked.set_value(false);
                self.write_unsaved();
            });
        }
    }

    /// Writes what is due. Where what writes is not loaded yet, it is waited for; where it cannot be
    /// loaded, that is said and the next change tries again.
    pub(super) fn write_unsaved(self) {
        if self.unsaved.is_empty() {
            return;
        }
        if records::are_here() {
            self.unsaved.write();
            return;
        }
        spawn_local(async move {
            if records::load().await {
                self.unsaved.write();
            } else {
                self.show_toast(notice::not_loaded());
            }
        });
    }
}
