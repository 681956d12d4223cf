//! The root of the page: header, place, foot, bar of places, and the dialog.

use crate::text::tr;
use leptos::prelude::*;

use super::foot::Foot;
use super::head::Head;
use super::opened::OpenedDialog;
use super::places::Places;
use crate::app::browser::{focus, live_region};
use crate::app::lazy;
use crate::app::page::{FormulaPlace, HEADING};
use crate::app::state::{memo, use_app_state};
use crate::sheet::Place;

/// The root of the page.
#[component]
pub fn AppRoot() -> impl IntoView {
    let state = use_app_state();
    // A change of language draws the page again; the state holds what was typed.
    let is_begun = memo(move || state.drawing.get().has_shell());
    let whole = move || {
        state.language_revision.track();
        is_begun.get().then(|| view! { <Page /> })
    };
    view! { {whole} }
}

/// The page in one language.
#[component]
fn Page() -> impl IntoView {
    let state = use_app_state();
    let skip = move |event: leptos::ev::MouseEvent| {
        event.prevent_default();
        focus::move_to(HEADING);
    };
    // A change of format options draws the place again, so that its figures need not follow them.
    let has_place = memo(move || state.drawing.get().has_place());
    let place = move || {
        state.options.track();
        if !has_place.get() {
            return ().into_any();
        }
        lazy::place(state.place.get()).unwrap_or_else(|| view! { <FormulaPlace /> }.into_any())
    };
    let is_visit = move || state.begins_with_weights() && state.place.get() == Place::Formula;
    view! {
        <a class="skip" href=format!("#{HEADING}") on:click=skip>{tr!("Skip to the figures")}</a>
        <div class="shell" data-stale=move || state.is_stale().to_string()>
            <Head />
            <main class="main">
                <Show when=is_visit>{lazy::visit()}</Show>
                {place}
            </main>
            <Foot />
            <Places />
        </div>
        <p id=live_region::REGION class="visually-hidden" role="status"></p>
        <OpenedDialog />
    }
}
