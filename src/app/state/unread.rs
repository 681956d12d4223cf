//! Unread boxes: texts that cannot be taken, kept until they are put right or put aside.

use leptos::prelude::*;

use super::State;

impl State {
    /// The text that could not be taken from a box, and why, where it still stands.
    pub fn unread_text(self, id: &str) -> Option<(String, String)> {
        self.unread.with_untracked(|unread| unread.get(id).cloned())
    }

    /// Notes that a box can be read (`trouble` empty), or cannot.
    pub fn note_unread(self, id: &str, text: &str, trouble: &str) {
        let known = self.unread.with_untracked(|unread| unread.contains_key(id));
        if !trouble.is_empty() {
            self.unread.update(|unread| {
                drop(unread.insert(id.to_owned(), (text.to_owned(), trouble.to_owned())));
            });
        } else if known {
            self.unread.update(|unread| drop(unread.remove(id)));
        }
    }

    /// Whether some box cannot be read, so that the figures are those from before.
    pub fn is_stale(self) -> bool {
        self.unread.with(|unread| !unread.is_empty())
    }

    /// Has every box forget what was typed: after undo, or when another sheet is opened.
    pub fn settle(self) {
        self.settled.update(|times| *times = times.wrapping_add(1));
        if self.unread.with_untracked(|unread| !unread.is_empty()) {
            self.unread.update(std::collections::BTreeMap::clear);
        }
    }
}
