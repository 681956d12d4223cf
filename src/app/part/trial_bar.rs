//! Trial bar: what was changed, drop it or keep it.

use leptos::prelude::*;

use super::Button;
use crate::app::browser::live_region::announce;
use crate::app::state::{memo, use_app_state};
use crate::text::{notice, tr, trial};

/// The bar that stands there while a trial is on.
#[component]
pub fn TrialBar() -> impl IntoView {
    let state = use_app_state();
    let changed = memo(move || {
        let options = state.options.get();
        state.with(|tried| state.with_saved(|saved| trial::changed(saved, tried, options)))
    });
    let drop_it = move || {
        state.drop_trial();
        announce(tr!("Trial dropped. The formula stands as it was kept."));
    };
    let keep_it = move || {
        state.keep_trial();
        announce(tr!("Trial kept."));
    };
    let keep_apart = move || {
        state.keep_trial_apart();
        announce(tr!("Trial kept as a copy."));
    };
    let parted = memo(move || state.is_parted());
    let idle = Signal::derive(move || state.is_stale());
    view! {
        <section class="trial-bar" aria-label=tr!("Trial")>
            <p>
                <strong>{tr!("Trial: ")}</strong>
                {changed}
            </p>
            <Show when=move || parted.get()>
                <p role="status">{notice::trial_parted()}</p>
            </Show>
            <div class="buttons">
                <Button says=tr!("Drop") tapped=move |()| drop_it() />
                <Show when=move || parted.get() fallback=move || view! { <Button says=tr!("Keep") class="chief" idle tapped=move |()| keep_it() /> }>
                    <Button says=tr!("Keep over it") idle tapped=move |()| keep_it() />
                    <Button says=tr!("Keep as a copy") class="chief" idle tapped=move |()| keep_apart() />
                </Show>
            </div>
        </section>
    }
}
