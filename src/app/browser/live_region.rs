//! Announcing: a sentence for those who listen to the page.

use leptos::prelude::*;

/// The id of the region that is listened to.
pub const REGION: &str = "announced";

/// Has a sentence read out when the reader is next free.
pub fn announce(sentence: &str) {
    if let Some(region) = document().get_element_by_id(REGION) {
        region.set_text_content(Some(sentence));
    }
}
