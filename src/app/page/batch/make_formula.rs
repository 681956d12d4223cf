//! The button that makes the batch the formula.

use leptos::prelude::*;

use super::BatchContext;
use crate::app::browser::live_region::announce;
use crate::app::part::Button;
use crate::app::state::{memo, use_app_state};
use crate::results::batch::{BatchResults, as_formula};
use crate::text::{ErrorText, tr};

/// Puts the batch's weights in place of the formula's.
#[component]
pub fn MakeFormula() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let is_same = memo(move || context.results.with(BatchResults::is_formula_once));
    let make = move |()| match as_formula(&state.sheet()) {
        Ok(scaled) => {
            state.put(scaled, None);
            state.reset_inputs();
            announce(tr!(
                "The formula now has this batch’s weights. Undo brings the old ones back."
            ));
        }
        Err(error) => announce(&error.sentence(state.options.get_untracked())),
    };
    view! {
        <p class="quiet">{tr!("Replaces the formula’s weights with these, unrounded. Undo brings the old ones back.")}</p>
        <div class="buttons">
            <Button label=tr!("Use as the formula") disabled=Signal::derive(move || is_same.get() || state.is_stale()) on_tap=make />
        </div>
    }
}
