//! Key figures: the three that the place is about.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::page::FormulaKeys;
use crate::app::state::{memo, use_app_state};
use crate::sheet::Place;

/// The three figures that the place is about.
#[component]
pub fn Keys() -> impl IntoView {
    let state = use_app_state();
    let are_due = memo(move || state.drawing.get().has_key_figures());
    move || {
        state.options.track();
        if !are_due.get() {
            return ().into_any();
        }
        // A visitor's first figures are those of what is weighed.
        let place = state.place.get();
        if place == Place::Formula && state.begins_with_weights() {
            return lazy::visit_keys();
        }
        lazy::key_figures(place).unwrap_or_else(|| view! { <FormulaKeys /> }.into_any())
    }
}
