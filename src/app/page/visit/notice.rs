//! The notice of a visit: the formula came with a link and can be kept. Closed, it stays closed for
//! this link, also after a reload; the cards then have its button.

use std::time::Duration;

use leptos::prelude::*;

use crate::app::browser::clock::Debounce;
use crate::app::browser::{address, storage};
use crate::app::lazy::records;
use crate::app::part::{Button, IconButton, Picture};
use crate::app::state::{AppState, use_app_state};
use crate::storage::key;
use crate::text::{notice, tr};

/// Whether the notice of the link in the address is closed.
#[derive(Clone, Copy)]
pub struct NoticeClosed(RwSignal<bool>);

/// The rest after which the address holds what was typed into the copy.
const REST: Duration = Duration::from_secs(1);

impl NoticeClosed {
    fn of(state: AppState) -> Self {
        let closed = RwSignal::new(is_closed());
        let debounce = Debounce::default();
        // The copy lives in the address, which changes with it: the link stays the closed one. Another
        // link is another copy, which tells of itself.
        Effect::new(move |before: Option<bool>| {
            let _saved = state.saved();
            let is_visit = state.open_id.with(Option::is_none);
            if before == Some(true) && is_visit && closed.get_untracked() {
                debounce.run(REST, remember);
            }
            is_visit
        });
        address::watch(move |_| closed.set(is_closed()));
        Self(closed)
    }

    /// That of this page.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(Self::of)
    }

    /// Whether it is closed.
    pub fn get(self) -> bool {
        self.0.get()
    }

    fn close(self) {
        self.0.set(true);
        remember();
    }
}

/// Whether the link in the address is the one whose notice was closed.
fn is_closed() -> bool {
    let closed = storage::get(key::CLOSED_VISIT).ok().flatten();
    closed.is_some_and(|link| link == address::fragment())
}

/// Stores the link in the address. Where nothing can be stored, the notice comes back.
fn remember() {
    let _refused = storage::set(key::CLOSED_VISIT, &address::fragment());
}

/// The notice.
#[component]
pub fn VisitNotice() -> impl IntoView {
    let state = use_app_state();
    let closed = NoticeClosed::from_context();
    view! {
        <Show when=move || !closed.get()>
            <div class="notice came-with-link" role="status">
                <p>{notice::visitor()}</p>
                // A trial has its own button, which keeps the trial.
                <Show when=move || !state.is_trial()>
                    <Button label=tr!("Keep it") on_tap=move |()| records::then(move || state.save_visit()) />
                </Show>
                <IconButton picture=Picture::Close name=tr!("Close the notice") on_tap=move |()| closed.close() />
            </div>
        </Show>
    }
}
