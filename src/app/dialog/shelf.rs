//! The dialog.

use leptos::prelude::*;

/// The dialog.
#[component]
pub fn ShelfDialog() -> impl IntoView {
    view! { <p></p> }
}
