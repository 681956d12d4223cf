//! The three figures of the place.

use leptos::prelude::*;

/// The three figures that the place is about.
#[component]
pub fn ChocolateKeys() -> impl IntoView {
    view! { <span></span> }
}
