//! Kitchen link: whose kitchen this is, and the way to it.

use leptos::prelude::*;

use crate::app::state::{State, memo};
use crate::text::{name, tr, format};

/// The kitchen that counts here, with its room; a tap goes to it.
#[component]
pub fn KitchenLink() -> impl IntoView {
    let state = State::here();
    let says = memo(move || {
        let manner = state.manner.get();
        state.kitchen.with(|kitchen| {
            tr!("{first}: room at {second}",
                first = name::called(&kitchen.name),
                second = format::temperature(kitchen.room, manner))
        })
    });
    view! { <a class="kitchen-link" href="#heat">{says}</a> }
}
