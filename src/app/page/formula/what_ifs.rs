//! What if: trials that are one tap away.

use leptos::prelude::*;

use super::target_fields::TargetFields;
use crate::app::browser::live_region::announce;
use crate::app::lazy;
use crate::app::part::{AnswerRow, Button};
use crate::app::state::{AppState, memo, use_app_state};
use crate::results::formula::{Offer, try_what_if, what_ifs};
use crate::text::{ErrorText, line, tr, trial};

/// Trials that are one tap away.
#[component]
pub fn WhatIfs() -> impl IntoView {
    view! {
        <AnswerRow title=tr!("What if") answer=tr!("try changes, then keep or drop them")>
            {lazy::what_if_content()}
        </AnswerRow>
    }
}

/// What the row opens to.
#[component]
pub fn WhatIfContent() -> impl IntoView {
    let state = use_app_state();
    let refused = RwSignal::new(None::<String>);
    let offered = memo(move || state.with(what_ifs));
    let dry =
        memo(move || offered.with(|offered| offered.iter().any(|offer| offer.takes.is_some())));
    // The label names the liquid that is taken, which may become another without another offer.
    let tap = move |offer: Offer| {
        let label = memo(move || state.with(|sheet| line::offer(&sheet.formula, offer)));
        view! { <Button label on_tap=move |()| refused.set(attempt(state, offer)) /> }
    };
    view! {
        <div class="body">
            <div class="taps">
                <Show when=move || !state.is_trial()>
                    <Button label=tr!("Try changes") on_tap=move |()| state.begin_trial() />
                </Show>
                <For each=move || offered.get() key=|offer| *offer let(offer)>
                    {tap(offer)}
                </For>
            </div>
            <Show when=move || dry.get()>
                <p class="quiet">{tr!("The final dough has too little plain water to take two points. The button says which liquid is taken instead.")}</p>
            </Show>
            {move || refused.get().map(|wording| view! { <p class="error">{wording}</p> })}
            <h3>{tr!("Hit a target")}</h3>
            <TargetFields />
        </div>
    }
}

/// Tries it; returns the message of the error where it cannot be.
fn attempt(state: AppState, offer: Offer) -> Option<String> {
    let options = state.options.get_untracked();
    match try_what_if(&state.sheet(), offer) {
        Ok(tried) => {
            let wording =
                untrack(|| state.with_saved(|saved| trial::changed(saved, &tried, options)));
            announce(&wording);
            state.attempt(tried);
            None
        }
        Err(error) => {
            let wording = error.sentence(options);
            announce(&wording);
            Some(wording)
        }
    }
}
