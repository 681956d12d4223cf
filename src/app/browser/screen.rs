//! The screen: whether it has room for all rows of a place at once.

use leptos::prelude::window;

/// The width from which style/ puts cards side by side.
const WIDE: &str = "(min-width: 60rem)";

/// Returns whether the page is as wide as two columns of cards.
pub fn is_wide() -> bool {
    // The browser refuses only what is no media query.
    let query = window().match_media(WIDE).ok().flatten();
    query.is_some_and(|query| query.matches())
}
