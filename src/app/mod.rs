//! The page: its places, drawn with Leptos from what the other layers compute. It decides nothing.
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
#[cfg(app_on_host)]
mod first_screen;
pub mod lazy;
pub mod page;
pub mod part;
pub mod shell;
pub mod state;

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

#[cfg(app_on_host)]
pub use first_screen::first_screen;

use crate::storage::Fragment;
use browser::{address, clock, focus, number_boxes, offline, persist, splash, storage};
use lazy::{language, links, records};
use shell::AppRoot;
use state::{AppState, Drawing};

/// Draws the page into the document, once the chunks that it needs at first are loaded.
pub fn start() {
    spawn_local(async {
        clock::next_task().await;
        // What is stored is read, or nothing is drawn: data must never seem lost.
        if storage::is_untouched() || records::load().await {
            let chosen = AppState::language_saved();
            if !language::load(chosen).await {
                // Without its texts the page is in English; choosing it again asks once more.
                let _english = language::load(Some(crate::sheet::Language::English)).await;
            }
            load_for(&address::fragment()).await;
            clock::next_task().await;
            draw();
        } else {
            splash::show_failure();
        }
    });
}

/// Loads what the address needs. Where that fails, navigation reports it.
async fn load_for(fragment: &str) {
    if matches!(Fragment::read(fragment), Fragment::SharedFormula(_)) {
        // What shows the formula comes beside what reads it, not after it.
        spawn_local(lazy::load_visit());
        let _came = links::load().await;
    }
}

fn draw() {
    let Some(first) = crate::text::example::examples().into_iter().next() else {
        return;
    };
    mount_to_body(move || {
        let state = AppState::begin(first);
        provide_context(state);
        state.follow();
        state.follow_other_tabs();
        lazy::start_timers(state);
        lazy::find_bake(state);
        clock::on_leaving(move || state.flush());
        number_boxes::watch(move || state.end_step());
        offline::watch(state.newer_version);
        persist::ask();
        address::watch(move |fragment| {
            spawn_local(async move {
                load_for(&fragment).await;
                navigate(state, &fragment);
            });
        });
        spawn_local(draw_in_steps(state));
        view! { <AppRoot /> }
    });
}

/// Draws the page in steps, one a task; then shows it in place of the first screen.
async fn draw_in_steps(state: AppState) {
    let parts = untrack(|| state.with(|sheet| sheet.formula.parts.len()));
    for step in Drawing::steps(parts) {
        clock::next_task().await;
        state.drawing.set(step);
    }
    clock::next_task().await;
    state.drawing.set(Drawing::WHOLE);
    splash::remove();
}

fn navigate(state: AppState, fragment: &str) {
    focus::leave_box();
    let before = state.place.get_untracked();
    state.navigate(fragment);
    if state.place.get_untracked() != before {
        focus::to_the_top();
        focus::move_to(page::HEADING);
    }
}
