//! What if: trials that are one tap away.

use leptos::prelude::*;

use super::target_fields::TargetFields;
use crate::app::browser::live_region::announce;
use crate::app::part::{AnswerRow, Button};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::formula::WhatIf;
use crate::results::formula::{try_what_if, what_ifs};
use crate::text::{ErrorText, name, tr, trial};

/// Trials that are one tap away.
#[component]
pub fn WhatIfs() -> impl IntoView {
    view! {
        <AnswerRow title=tr!("What if") answer=tr!("try changes, then keep or drop them")>
            <WhatIfContent />
        </AnswerRow>
    }
}

/// What the row opens to.
#[component]
fn WhatIfContent() -> impl IntoView {
    let state = use_app_state();
    let refused = RwSignal::new(None::<String>);
    let offered = memo(move || state.with(what_ifs));
    let tap = move |what_if: WhatIf| view! { <Button label=name::what_if(what_if) on_tap=move |()| refused.set(attempt(state, what_if)) /> };
    view! {
        <div class="body">
            <div class="taps">
                <Show when=move || !state.is_trial()>
                    <Button label=tr!("Change things without keeping them") on_tap=move |()| state.begin_trial() />
                </Show>
                <For each=move || offered.get() key=|what_if| *what_if let(what_if)>
                    {tap(what_if)}
                </For>
            </div>
            {move || refused.get().map(|wording| view! { <p class="error">{wording}</p> })}
            <h3>{tr!("Set a figure")}</h3>
            <TargetFields />
        </div>
    }
}

/// Tries it; returns the message of the error where it cannot be.
fn attempt(state: AppState, what_if: WhatIf) -> Option<String> {
    let options = state.options.get_untracked();
    match try_what_if(&state.sheet(), what_if) {
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
