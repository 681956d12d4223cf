//! Invalid inputs: texts that cannot be stored, remembered until they are corrected or discarded.

use leptos::prelude::*;

use std::collections::BTreeMap;

use super::AppState;

/// The prefix of the keys of boxes in the dialog.
const IN_DIALOG: &str = "dialog/";

impl AppState {
    /// The text of a box that could not be stored, and the reason.
    pub fn invalid_text(self, id: &str) -> Option<(String, String)> {
        let key = self.input_key(id);
        // The page below an open dialog may be drawn anew: its boxes have keys without the prefix.
        self.invalid_inputs
            .with_untracked(|inputs| inputs.get(&key).or_else(|| inputs.get(id)).cloned())
    }

    /// The key of a box. Boxes in the dialog have their own, because they are forgotten with it.
    fn input_key(self, id: &str) -> String {
        if self.opened.with_untracked(Option::is_some) {
            format!("{IN_DIALOG}{id}")
        } else {
            id.to_owned()
        }
    }

    /// Forgets the inputs of the dialog, which was closed.
    pub fn leave_dialog(self) {
        self.opened.set(None);
        let in_dialog = |key: &String| key.starts_with(IN_DIALOG);
        if self
            .invalid_inputs
            .with_untracked(|inputs| inputs.keys().any(in_dialog))
        {
            self.invalid_inputs
                .update(|inputs| inputs.retain(|key, _| !in_dialog(key)));
        }
    }

    /// Remembers the text of a box with the reason why it cannot be stored; with an empty reason,
    /// forgets it.
    pub fn note_invalid(self, id: &str, text: &str, reason: &str) {
        let key = self.input_key(id);
        let is_known = self
            .invalid_inputs
            .with_untracked(|inputs| inputs.contains_key(&key));
        if !reason.is_empty() {
            self.invalid_inputs.update(|inputs| {
                drop(inputs.insert(key, (text.to_owned(), reason.to_owned())));
            });
        } else if is_known {
            self.invalid_inputs
                .update(|inputs| drop(inputs.remove(&key)));
        }
    }

    /// Whether a box is invalid, so that the figures shown are the last good ones.
    pub fn is_stale(self) -> bool {
        self.invalid_inputs.with(|inputs| !inputs.is_empty())
    }

    /// Makes every box forget its text: after undo, or when another sheet is opened.
    pub fn reset_inputs(self) {
        self.input_resets
            .update(|times| *times = times.wrapping_add(1));
        if self
            .invalid_inputs
            .with_untracked(|inputs| !inputs.is_empty())
        {
            self.invalid_inputs.update(BTreeMap::clear);
        }
    }
}
