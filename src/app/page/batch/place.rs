//! The place.

use leptos::prelude::*;

use crate::app::page::HEADING;

/// The place.
#[component]
pub fn BatchPlace() -> impl IntoView {
    view! { <h1 id=HEADING tabindex="-1">"Batch"</h1> }
}
