//! The page: its places, drawn with Leptos from what the other layers say. It decides nothing.
#![allow(unreachable_pub, reason = "#[component] writes its own `pub`")]
#![allow(
    missing_docs,
    reason = "#[component] writes a struct of props that it does not document"
)]
#![allow(
    clippy::too_many_lines,
    reason = "a component is one view, laid out a line an attribute"
)]
#![allow(clippy::must_use_candidate, reason = "components are used in views")]

pub mod browser;
pub mod dialog;
pub mod later;
pub mod page;
pub mod part;
pub mod shell;
pub mod state;

use leptos::prelude::*;

use browser::{address, clock, focus, offline, persist};
use shell::Whole;
use state::State;

/// Draws the page into the document.
pub fn start() {
    let Some((_, first)) = crate::sheet::examples().into_iter().next() else {
        return;
    };
    mount_to_body(move || {
        let state = State::begin(&first);
        provide_context(state);
        state.follow();
        state.follow_other_tabs();
        clock::on_leaving(move || state.flush());
        offline::watch(state.newer_version);
        persist::ask();
        address::watch(move |fragment| {
            let before = state.place.get_untracked();
            state.obey(&fragment);
            if state.place.get_untracked() != before {
                focus::to_the_top();
                focus::move_to(page::HEADING);
            }
        });
        view! { <Whole /> }
    });
}
