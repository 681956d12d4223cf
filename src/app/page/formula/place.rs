//! The place: its heading, the streams, and what follows from them.

use leptos::prelude::*;

use super::stream_card::StreamCard;
use crate::app::later;
use crate::app::page::HEADING;
use crate::app::part::{Button, Choice, Picture};
use crate::app::state::{Opened, State, memo};
use crate::engine::formula::Basis;
use crate::sheet::Place;
use crate::words::{name, say};

/// What is this dough?
#[component]
pub fn FormulaPlace() -> impl IntoView {
    let state = State::here();
    let streams = memo(move || state.with(|sheet| sheet.formula.streams.len()));
    let answers = [Basis::AllFlour, Basis::OwnStream].map(|basis| (basis, name::basis(basis)));
    view! {
        <div class="place-head">
            <h1 id=HEADING tabindex="-1">{name::place(Place::Formula)}</h1>
            <Choice
                id="basis"
                label=say!("Percentages")
                answers=answers.to_vec()
                holds=state.basis
                chosen=move |basis| {
                    state.basis.set(basis);
                    state.settle();
                }
            />
        </div>
        <div class="columns">
            <div class="cards">
                <For each=move || 0..streams.get() key=|stream| *stream let(stream)>
                    <StreamCard stream />
                </For>
                <Button says=say!("Add a stream") picture=Picture::Add tapped=move |()| state.open(Opened::AddStream) />
            </div>
            {later::formula_rest()}
        </div>
    }
}
