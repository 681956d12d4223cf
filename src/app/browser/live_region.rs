//! Live region: sentences for screen readers.

use leptos::prelude::*;

/// The id of the live region.
pub const REGION: &str = "announced";

/// Lets the screen reader read a sentence out when it is idle.
pub fn announce(sentence: &str) {
    if let Some(region) = document().get_element_by_id(REGION) {
        region.set_text_content(Some(sentence));
    }
}
