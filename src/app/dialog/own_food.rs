//! The user's own ingredient, from what its packet says.

use leptos::prelude::*;

use crate::engine::larder::Food;

/// A form for an ingredient of the user's own.
#[component]
pub fn OwnFoodForm(
    /// Called with the ingredient.
    made: Callback<Food>,
) -> impl IntoView {
    let _made = made;
    view! { <p></p> }
}
