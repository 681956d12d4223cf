//! The place: its heading, the parts, and their results.

use leptos::prelude::*;

use super::part_card::PartCard;
use crate::app::lazy;
use crate::app::page::HEADING;
use crate::app::part::{Button, Choice, Picture};
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::engine::formula::Basis;
use crate::sheet::Place;
use crate::text::{name, tr};

/// The place for the formula.
#[component]
pub fn FormulaPlace() -> impl IntoView {
    let state = use_app_state();
    let parts = memo(move || {
        let parts = state.with(|sheet| sheet.formula.parts.len());
        parts.min(state.drawn_parts.get())
    });
    let answers = [Basis::AllFlour, Basis::OwnPart].map(|basis| (basis, name::basis(basis)));
    view! {
        <div class="place-head">
            <h1 id=HEADING tabindex="-1">{name::place(Place::Formula)}</h1>
            <Choice
                id="basis"
                label=tr!("Percentages")
                choices=answers.to_vec()
                selected=state.basis
                on_select=move |basis| {
                    state.basis.set(basis);
                    state.reset_inputs();
                }
            />
        </div>
        <div class="columns">
            <div class="cards">
                <For each=move || 0..parts.get() key=|part| *part let(part)>
                    <PartCard part />
                </For>
                <Button label=tr!("Add a stream") picture=Picture::Add on_tap=move |()| state.open(DialogKind::AddPart) />
            </div>
            {lazy::formula_rest()}
        </div>
    }
}
