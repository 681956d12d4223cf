//! The dialog.

use leptos::prelude::*;

/// The dialog.
#[component]
pub fn SettingsDialog() -> impl IntoView {
    view! { <p></p> }
}
