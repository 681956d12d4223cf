//! Thickness wished for: by what the syrup should do, or by a figure.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::browser::live_region::announce;
use crate::app::part::{Choice, WorkingButton};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::chocolate::{Consistency, Flow};
use crate::engine::formula::Formula;
use crate::engine::quantity::Viscosity;
use crate::text::{ErrorText, format, name, tr};

/// Pours as much liquid as makes the syrup so thick.
///
/// # Errors
/// The error; nothing is changed then.
pub fn set_thickness(
    state: AppState,
    context: ChocolateContext,
    from: &str,
    wished: Viscosity,
) -> Result<(), String> {
    let options = state.options.get_untracked();
    let set = |formula: &Formula| {
        let results = context.now;
        results.with_untracked(|results| results.with_thickness(formula, wished))
    };
    let set = state.change(from, set);
    set.map_err(|error| error.sentence(options))
}

/// What the syrup should do.
#[component]
pub fn HandlingChoice() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let refused = RwSignal::new(String::new());
    let selected = memo(move || {
        let handling = context.read_syrup(|syrup| match syrup.flow {
            Flow::Flows { handling, .. } => Some(handling),
            Flow::Seized | Flow::MeltedOnly => None,
        });
        handling.flatten()
    });
    let needed = memo(move || {
        let wished = selected.get()?.typical()?;
        context.now.with(|now| now.liquid_needed(wished))
    });
    let title = Signal::derive(move || {
        selected
            .get()
            .map(name::handling)
            .unwrap_or_default()
            .to_owned()
    });
    let worked = move |()| {
        let options = state.options.get();
        needed.get().map_or_else(Default::default, |needed| {
            let amount = format::mass(needed.liquid, options);
            let shown = format!("{amount}: {}", format::viscosity(needed.thickness, options));
            (shown, needed.working())
        })
    };
    let targets = Consistency::WORKABLE
        .map(|handling| (Some(handling), name::handling(handling)))
        .to_vec();
    let chosen = move |handling: Option<Consistency>| {
        let Some(wished) = handling.and_then(Consistency::typical) else {
            return;
        };
        let wording = set_thickness(state, context, "syrup-wish", wished)
            .err()
            .unwrap_or_default();
        state.reset_inputs();
        if !wording.is_empty() {
            announce(&wording);
        }
        refused.set(wording);
    };
    view! {
        <Choice id="syrup-wish" label=tr!("Thin it to") choices=targets selected on_select=Callback::new(chosen) />
        {move || (!refused.with(String::is_empty)).then(|| view! { <p class="error">{refused.get()}</p> })}
        <Show when=move || needed.with(Option::is_some)>
            <WorkingButton title worked=Callback::new(worked) />
        </Show>
    }
}
