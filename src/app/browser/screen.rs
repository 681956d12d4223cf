//! The screen: whether it has room for all rows of a place at once, and whether the bench has it alone.

use leptos::prelude::{document, window};

/// The width from which style/ puts cards side by side.
const WIDE: &str = "(min-width: 60rem)";

/// Returns whether the page is as wide as two columns of cards.
pub fn is_wide() -> bool {
    // The browser refuses only what is no media query.
    let query = window().match_media(WIDE).ok().flatten();
    query.is_some_and(|query| query.matches())
}

/// Gives the whole screen to the bench, or takes it back: style/ hides what else is there.
pub fn give_to_bench(is_given: bool) {
    if let Some(root) = document().document_element() {
        // The browser refuses only what is no name of a class.
        let _refused = root.class_list().toggle_with_force("on-bench", is_given);
    }
}
