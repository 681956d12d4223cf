//! Splash: the text in the shell until the page is drawn.

use leptos::prelude::*;

use crate::text::notice;

/// Removes it once the page is drawn.
pub fn remove() {
    if let Some(word) = document().get_element_by_id("waiting") {
        word.remove();
    }
}

/// Shows that the page cannot be drawn.
pub fn show_failure() {
    if let Some(word) = document().get_element_by_id("waiting") {
        word.set_text_content(Some(notice::not_started()));
    }
}
