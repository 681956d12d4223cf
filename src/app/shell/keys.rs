//! Key figures: the three that the place is about.

use leptos::prelude::*;

use crate::app::page::{BatchKeys, ChocolateKeys, FormulaKeys};
use crate::app::state::State;
use crate::sheet::Place;

/// The three figures that the place is about.
#[component]
pub fn Keys() -> impl IntoView {
    let state = State::here();
    move || match state.place.get() {
        Place::Formula => view! { <FormulaKeys /> }.into_any(),
        Place::Batch => view! { <BatchKeys /> }.into_any(),
        Place::Chocolate => view! { <ChocolateKeys /> }.into_any(),
    }
}
