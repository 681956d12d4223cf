//! Unread boxes: texts that cannot be taken, kept until they are put right or put aside.

use leptos::prelude::*;

use super::AppState;

/// What the note of a box in the dialog begins with.
const IN_DIALOG: &str = "dialog/";

impl AppState {
    /// The text that could not be taken from a box, and why, where it still stands.
    pub fn unread_text(self, id: &str) -> Option<(String, String)> {
        let key = self.key(id);
        // The page below the dialog may be drawn anew while that is open: its boxes have their own names.
        self.invalid_inputs
            .with_untracked(|unread| unread.get(&key).or_else(|| unread.get(id)).cloned())
    }

    /// Boxes in the dialog are noted apart, because they go with it.
    fn key(self, id: &str) -> String {
        if self.opened.with_untracked(Option::is_some) {
            format!("{IN_DIALOG}{id}")
        } else {
            id.to_owned()
        }
    }

    /// Forgets the boxes of the dialog, which is closed.
    pub fn leave_dialog(self) {
        self.opened.set(None);
        let left = |key: &String| key.starts_with(IN_DIALOG);
        if self
            .invalid_inputs
            .with_untracked(|unread| unread.keys().any(left))
        {
            self.invalid_inputs
                .update(|unread| unread.retain(|key, _| !left(key)));
        }
    }

    /// Notes that a box can be read (`trouble` empty), or cannot.
    pub fn note_unread(self, id: &str, text: &str, trouble: &str) {
        let key = self.key(id);
        let known = self
            .invalid_inputs
            .with_untracked(|unread| unread.contains_key(&key));
        if !trouble.is_empty() {
            self.invalid_inputs.update(|unread| {
                drop(unread.insert(key, (text.to_owned(), trouble.to_owned())));
            });
        } else if known {
            self.invalid_inputs
                .update(|unread| drop(unread.remove(&key)));
        }
    }

    /// Whether some box cannot be read, so that the figures are those from before.
    pub fn is_stale(self) -> bool {
        self.invalid_inputs.with(|unread| !unread.is_empty())
    }

    /// Has every box forget what was typed: after undo, or when another sheet is opened.
    pub fn reset_inputs(self) {
        self.input_resets
            .update(|times| *times = times.wrapping_add(1));
        if self
            .invalid_inputs
            .with_untracked(|unread| !unread.is_empty())
        {
            self.invalid_inputs
                .update(std::collections::BTreeMap::clear);
        }
    }
}
