//! Key figures: the three that the place is about.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::page::FormulaKeys;
use crate::app::state::use_app_state;

/// The three figures that the place is about.
#[component]
pub fn Keys() -> impl IntoView {
    let state = use_app_state();
    move || {
        state.options.track();
        lazy::key_figures(state.place.get()).unwrap_or_else(|| view! { <FormulaKeys /> }.into_any())
    }
}
