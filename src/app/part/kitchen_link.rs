//! Kitchen link: whose kitchen this is, and the way to it.

use leptos::prelude::*;

use crate::app::state::{memo, use_app_state};
use crate::text::{format, name, tr};

/// The chosen kitchen, with its room; a tap opens it.
#[component]
pub fn KitchenLink() -> impl IntoView {
    let state = use_app_state();
    let says = memo(move || {
        let options = state.options.get();
        state.kitchen.with(|kitchen| {
            tr!(
                "{first}: room at {second}",
                first = name::called(&kitchen.name),
                second = format::temperature(kitchen.room, options)
            )
        })
    });
    view! { <a class="kitchen-link" href="#heat">{says}</a> }
}
