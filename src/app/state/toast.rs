//! Telling: a sentence that is seen and heard for a moment, of something that may be out of sight.

use std::time::Duration;

use leptos::prelude::*;

use super::AppState;
use crate::app::browser::live_region::announce;

/// How long it is seen.
const SEEN: Duration = Duration::from_secs(6);

impl AppState {
    /// Says a sentence for a moment.
    pub fn tell(self, said: &'static str) {
        announce(said);
        let revision = self.next_revision();
        self.toast.set(Some((revision, said)));
        let over = move || {
            // Something said since then is seen for its own while.
            if self
                .toast
                .with_untracked(|told| told.is_some_and(|(of, _)| of == revision))
            {
                self.toast.set(None);
            }
        };
        set_timeout(over, SEEN);
    }
}
