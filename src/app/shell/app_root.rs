//! The whole page: header, place, foot, bar of places, and what may stand open over them.

use crate::text::tr;
use leptos::prelude::*;

use super::foot::Foot;
use super::head::Head;
use super::opened::OpenedDialog;
use super::places::Places;
use crate::app::browser::{focus, live_region};
use crate::app::lazy;
use crate::app::page::{FormulaPlace, HEADING};
use crate::app::state::use_app_state;
use crate::sheet::Place;

/// The whole page.
#[component]
pub fn Whole() -> impl IntoView {
    let state = use_app_state();
    // Another language draws all of it anew; what was typed stands in the state.
    let whole = move || {
        state.language_revision.track();
        view! { <Around /> }
    };
    view! { {whole} }
}

/// Everything in one language.
#[component]
fn Around() -> impl IntoView {
    let state = use_app_state();
    let skip = move |event: leptos::ev::MouseEvent| {
        event.prevent_default();
        focus::move_to(HEADING);
    };
    // Another options of writing draws the place anew, so that its figures need not follow that too.
    let place = move || {
        state.options.track();
        lazy::place(state.place.get()).unwrap_or_else(|| view! { <FormulaPlace /> }.into_any())
    };
    let is_visit = move || state.is_visit() && state.place.get() == Place::Formula;
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
        <p id=live_region::REGION class="heard" role="status"></p>
        <OpenedDialog />
    }
}
