//! Key figures: the three that the place is about.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::page::FormulaKeys;
use crate::app::state::State;

/// The three figures that the place is about.
#[component]
pub fn Keys() -> impl IntoView {
    let state = State::here();
    move || {
        state.manner.track();
        lazy::keys(state.place.get()).unwrap_or_else(|| view! { <FormulaKeys /> }.into_any())
    }
}
