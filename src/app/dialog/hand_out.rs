//! The dialog.

use leptos::prelude::*;

/// The dialog.
#[component]
pub fn HandOutDialog() -> impl IntoView {
    view! { <p></p> }
}
