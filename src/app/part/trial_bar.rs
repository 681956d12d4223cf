//! Trial bar: what was changed, drop it or keep it.

use leptos::prelude::*;

use super::Button;
use crate::app::browser::announce::announce;
use crate::app::state::{State, memo};
use crate::words::{notice, say, tried};

/// The bar that stands there while a trial is on.
#[component]
pub fn TrialBar() -> impl IntoView {
    let state = State::here();
    let changed = memo(move || {
        let manner = state.manner.get();
        state.with(|tried| state.with_kept(|kept| tried::changed(kept, tried, manner)))
    });
    let drop_it = move || {
        state.drop_trial();
        announce(say!("Trial dropped. The formula stands as it was kept."));
    };
    let keep_it = move || {
        state.keep_trial();
        announce(say!("Trial kept."));
    };
    let keep_apart = move || {
        state.keep_trial_apart();
        announce(say!("Trial kept as a copy."));
    };
    let parted = memo(move || state.is_parted());
    let idle = Signal::derive(move || state.is_stale());
    view! {
        <section class="trial-bar" aria-label=say!("Trial")>
            <p>
                <strong>{say!("Trial: ")}</strong>
                {changed}
            </p>
            <Show when=move || parted.get()>
                <p role="status">{notice::trial_parted()}</p>
            </Show>
            <div class="buttons">
                <Button says=say!("Drop") tapped=move |()| drop_it() />
                <Show when=move || parted.get() fallback=move || view! { <Button says=say!("Keep") class="chief" idle tapped=move |()| keep_it() /> }>
                    <Button says=say!("Keep over it") idle tapped=move |()| keep_it() />
                    <Button says=say!("Keep as a copy") class="chief" idle tapped=move |()| keep_apart() />
                </Show>
            </div>
        </section>
    }
}
