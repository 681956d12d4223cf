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

/// What the page shows of the formula that is open.
#[derive(Clone, Copy, PartialEq)]
enum Shown {
    /// Nothing yet.
    Nothing,
    /// What to weigh, for a formula that came by a link.
    Visit,
    /// A place.
    Place(Place),
}

/// The page in one language.
#[component]
fn Page() -> impl IntoView {
    let state = use_app_state();
    let skip = move |event: leptos::ev::MouseEvent| {
        event.prevent_default();
        focus::move_to(HEADING);
    };
    let shown = memo(move || {
        let place = state.place.get();
        if !state.drawing.get().has_place() {
            Shown::Nothing
        } else if place == Place::Formula && state.begins_with_weights() {
            Shown::Visit
        } else {
            Shown::Place(place)
        }
    });
    // A change of format options draws the place again, so that its figures need not follow them.
    let place = move || {
        state.options.track();
        match shown.get() {
            Shown::Nothing => ().into_any(),
            Shown::Visit => lazy::visit(),
            Shown::Place(place) => {
                lazy::place(place).unwrap_or_else(|| view! { <FormulaPlace /> }.into_any())
            }
        }
    };
    view! {
        <a class="skip" href=format!("#{HEADING}") on:click=skip>{tr!("Skip to the figures")}</a>
        <div class="shell" data-stale=move || state.is_stale().to_string()>
            <Head />
            <main class="main">
                {place}
            </main>
            <Foot />
            <Places />
        </div>
        <p id=live_region::REGION class="visually-hidden" role="status"></p>
        <OpenedDialog />
    }
}
