//! The page: five places, drawn with Leptos from what the other layers say. It decides nothing.
#![allow(unreachable_pub, reason = "#[component] writes its own `pub`")]

use leptos::prelude::*;

/// Draws the page into the document.
pub fn start() {
    leptos::mount::mount_to_body(|| view! { <p>"Softcrumb"</p> });
}
