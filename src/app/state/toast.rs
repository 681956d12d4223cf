//! Toast: a sentence shown and read out for some seconds, of something that may be off the screen.

use std::time::Duration;

use leptos::prelude::*;

use super::AppState;
use crate::app::browser::live_region::announce;

/// How long it is shown.
const SHOWN_FOR: Duration = Duration::from_secs(6);

impl AppState {
    /// Shows a sentence for some seconds.
    pub fn show_toast(self, sentence: &'static str) {
        announce(sentence);
        let revision = self.next_revision();
        self.toast.set(Some((revision, sentence)));
        let hide = move || {
            // A later sentence is shown for its own time.
            if self
                .toast
                .with_untracked(|toast| toast.is_some_and(|(of, _)| of == revision))
            {
                self.toast.set(None);
            }
        };
        set_timeout(hide, SHOWN_FOR);
    }
}
