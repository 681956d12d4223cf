//! The place.

use leptos::prelude::*;

use crate::app::page::HEADING;

/// The place.
#[component]
pub fn ChocolatePlace() -> impl IntoView {
    view! { <h1 id=HEADING tabindex="-1">"Chocolate"</h1> }
}
