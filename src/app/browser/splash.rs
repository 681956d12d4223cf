//! Splash: the first screen as the build drew it, and the text until the page is drawn.

use leptos::prelude::*;

use crate::text::notice;

/// Removes it, and the first screen that the build drew, in the frame that draws the page.
pub fn remove() {
    for id in ["first", "opening"] {
        if let Some(drawn) = document().get_element_by_id(id) {
            drawn.remove();
        }
    }
}

/// Shows that the page cannot be drawn.
pub fn show_failure() {
    if let Some(word) = document().get_element_by_id("waiting") {
        word.set_text_content(Some(notice::not_started()));
    }
}
