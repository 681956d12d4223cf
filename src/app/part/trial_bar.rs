//! Trial bar: the changes of a trial, with buttons to drop or keep them.

use leptos::prelude::*;

use super::Button;
use crate::app::browser::live_region::announce;
use crate::app::state::{memo, use_app_state};
use crate::text::{notice, tr, trial};

/// The bar shown during a trial.
#[component]
pub fn TrialBar() -> impl IntoView {
    let state = use_app_state();
    let changed = memo(move || {
        let options = state.options.get();
        state.with(|tried| state.with_saved(|saved| trial::changed(saved, tried, options)))
    });
    let drop_it = move || {
        state.drop_trial();
        announce(tr!("Trial dropped. The formula is as saved."));
    };
    let keep_it = move || {
        state.save_trial();
        announce(tr!("Trial kept."));
    };
    let keep_apart = move || {
        state.save_trial_as_copy();
        announce(tr!("Trial saved as a copy."));
    };
    let has_diverged = memo(move || state.has_diverged());
    let disabled = Signal::derive(move || state.is_stale());
    view! {
        <section class="trial-bar" aria-label=tr!("Trial")>
            <p>
                <strong>{tr!("Trial: ")}</strong>
                {changed}
            </p>
            <Show when=move || has_diverged.get()>
                <p role="status">{notice::trial_parted()}</p>
            </Show>
            <div class="buttons">
                <Button label=tr!("Drop") on_tap=move |()| drop_it() />
                <Show when=move || has_diverged.get() fallback=move || view! { <Button label=tr!("Keep") class="primary" disabled on_tap=move |()| keep_it() /> }>
                    <Button label=tr!("Replace it") disabled on_tap=move |()| keep_it() />
                    <Button label=tr!("Save as a copy") class="primary" disabled on_tap=move |()| keep_apart() />
                </Show>
            </div>
        </section>
    }
}
