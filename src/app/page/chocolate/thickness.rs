//! Thickness wished for: by what the syrup should do, or by a figure.

use leptos::prelude::*;

use super::ChocolateAnswers;
use crate::app::browser::live_region::announce;
use crate::app::part::Choice;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::chocolate::{Flow, Handling, set_liquid};
use crate::engine::quantity::Viscosity;
use crate::text::{Trouble, name, tr};

/// Pours as much liquid as makes the syrup so thick.
///
/// # Errors
/// What is in the way; then nothing is changed.
pub fn set_thickness(
    state: AppState,
    answers: ChocolateAnswers,
    from: &str,
    wished: Viscosity,
) -> Result<(), String> {
    untrack(|| {
        let options = state.options.get();
        let Some(part) = answers.topping.get() else {
            return Ok(());
        };
        let Some(needed) = answers.read_syrup(|syrup| syrup.liquid_for(wished)) else {
            return Ok(());
        };
        let needed = needed.map_err(|error| error.sentence(options))?;
        let set = state.change(from, |formula| set_liquid(formula, part, needed.liquid));
        set.map_err(|error| error.sentence(options))
    })
}

/// What the syrup should do.
#[component]
pub fn HandlingChoice() -> impl IntoView {
    let state = use_app_state();
    let answers = ChocolateAnswers::here();
    let refused = RwSignal::new(String::new());
    let holds = memo(move || {
        let handling = answers.read_syrup(|syrup| match syrup.flow {
            Flow::Flows { handling, .. } => Some(handling),
            Flow::Seized | Flow::MeltedOnly => None,
        });
        handling.flatten()
    });
    // What is too stiff to work is no wish.
    let settings = Handling::ALL
        .into_iter()
        .filter(|handling| *handling != Handling::Stiff)
        .map(|handling| (Some(handling), name::handling(handling)))
        .collect();
    let chosen = move |handling: Option<Handling>| {
        let Some(wished) = handling.and_then(Handling::typical) else {
            return;
        };
        let said = set_thickness(state, answers, "syrup-wish", wished)
            .err()
            .unwrap_or_default();
        state.reset_inputs();
        if !said.is_empty() {
            announce(&said);
        }
        refused.set(said);
    };
    view! {
        <Choice id="syrup-wish" label=tr!("Pour so much liquid that it will") answers=settings holds chosen=Callback::new(chosen) />
        {move || (!refused.with(String::is_empty)).then(|| view! { <p class="trouble">{refused.get()}</p> })}
    }
}
