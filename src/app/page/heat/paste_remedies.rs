//! What mends a paste that is not hot or wet enough, one a line, with a button that sets it.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::PasteRemedy;
use crate::engine::quantity::Mass;
use crate::results::heat::{PasteChange, apply_paste_change, paste_change};
use crate::text::{ErrorText, heat, tr};

/// The remedies of a paste; none where it needs none.
#[component]
pub fn PasteRemedies(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let remedies = memo(move || {
        let found = context.read_paste(part, |cooked| cooked.remedies.clone());
        found.unwrap_or_default()
    });
    let line = move |remedy: PasteRemedy| {
        let wording = heat::paste_remedy_line(&remedy, state.options.get());
        let label = format!("{}: {wording}", tr!("Use"));
        let button = paste_change(&remedy).map(|change| {
            view! {
                <button type="button" class="button primary" aria-label=label on:click=move |_| take(state, context, part, change)>
                    {tr!("Use")}
                </button>
            }
        });
        view! {
            <li>
                <span>{wording}</span>
                {button}
            </li>
        }
    };
    move || {
        let found = remedies.get();
        (!found.is_empty()).then(|| {
            view! { <ul class="remedies follows">{found.into_iter().map(line).collect_view()}</ul> }
        })
    }
}

/// Sets what a remedy asks for.
fn take(state: AppState, context: HeatContext, part: usize, change: PasteChange) {
    let poured = untrack(|| context.read_paste_result(part, |paste| paste.poured));
    let poured = (part, poured.unwrap_or(Mass::ZERO));
    let mut sheet = state.sheet();
    match apply_paste_change(&mut sheet.formula, &mut sheet.heat, poured, change) {
        Ok(()) => {
            state.edit(|saved| *saved = sheet);
            announce(tr!("Done. Undo reverses it."));
        }
        Err(error) => announce(&error.sentence(state.options.get_untracked())),
    }
}
