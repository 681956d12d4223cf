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
    view! {
        <h1 id=HEADING class="visually-hidden" tabindex="-1">{name::place(Place::Formula)}</h1>
        <FormulaCards />
    }
}

/// The parts of the formula, and their results.
#[component]
pub fn FormulaCards() -> impl IntoView {
    let state = use_app_state();
    let all = memo(move || state.with(|sheet| sheet.formula.parts.len()));
    let parts = memo(move || all.get().min(state.drawing.get().parts()));
    let has_rest = memo(move || parts.get() == all.get());
    let other_basis = move |()| {
        state.basis.update(|basis| *basis = basis.other());
        state.reset_inputs();
    };
    view! {
        <div class="columns">
            <div class="cards">
                <For each=move || 0..parts.get() key=|part| *part let(part)>
                    <PartCard part />
                </For>
                <div class="below-parts">
                    <Button label=tr!("Add a part") class="bare" picture=Picture::Add on_tap=move |()| state.open(DialogKind::AddPart) />
                    <Button label=memo(move || name::percentages(state.basis.get()).to_owned()) class="bare" on_tap=other_basis />
                </div>
            </div>
            {move || has_rest.get().then(lazy::formula_rest)}
        </div>
    }
}
