//! The place: its heading, the parts, and their results.

use leptos::prelude::*;

use super::part_card::PartCard;
use crate::app::lazy;
use crate::app::page::HEADING;
use crate::app::part::{Button, Picture};
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::sheet::Place;
use crate::text::{name, tr};

/// The place for the formula.
#[component]
pub fn FormulaPlace() -> impl IntoView {
    let state = use_app_state();
    let parts = memo(move || state.with(|sheet| sheet.formula.parts.len()));
    view! {
        <h1 id=HEADING class="visually-hidden" tabindex="-1">{name::place(Place::Formula)}</h1>
        <div class="columns">
            <div class="cards">
                <For each=move || 0..parts.get() key=|part| *part let(part)>
                    <PartCard part />
                </For>
                <Button label=tr!("Add a stream") class="bare" picture=Picture::Add on_tap=move |()| state.open(DialogKind::AddPart) />
            </div>
            {lazy::formula_rest()}
        </div>
    }
}
