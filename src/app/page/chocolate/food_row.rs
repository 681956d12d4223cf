//! The ingredients of the syrup or the filling, each with its weight in the formula.

use leptos::prelude::*;

use crate::app::page::{CardTexts, LineRows};
use crate::app::state::use_app_state;

/// All ingredients of a part.
#[component]
pub fn FoodRows(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let card = CardTexts::of(use_app_state(), part);
    view! { <LineRows card weight_only=true /> }
}
