//! Opening and closing the one dialog of the page.

use leptos::prelude::*;

use super::{AppState, DialogKind};
use crate::app::browser::{dialog, focus};

impl AppState {
    /// Opens something over the page, in place of what may be open.
    pub fn open(self, opened: DialogKind) {
        self.opened.set(Some(opened));
        dialog::show(self.dialog);
        focus::move_to(crate::app::part::TITLE);
    }

    /// Closes what is open.
    pub fn close(self) {
        dialog::close(self.dialog);
    }
}
