//! Waiting: the word in the shell that stands until the page is drawn.

use leptos::prelude::*;

use crate::text::notice;

/// The page is drawn: the word goes.
pub fn is_over() {
    if let Some(word) = document().get_element_by_id("waiting") {
        word.remove();
    }
}

/// The page cannot be drawn: the word says so.
pub fn is_in_vain() {
    if let Some(word) = document().get_element_by_id("waiting") {
        word.set_text_content(Some(notice::not_started()));
    }
}
