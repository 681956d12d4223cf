//! To weigh for this batch: filling and syrup, with what stays in bag and bowl.

use leptos::prelude::*;

use super::ChocolateAnswers;
use crate::app::page::{BatchAnswers, FieldBox, STAYS, WeighLine};
use crate::app::state::{State, memo};
use crate::engine::formula::LineAt;
use crate::words::weigh;

/// What to weigh for this batch.
#[component]
pub fn WeighCard() -> impl IntoView {
    let state = State::here();
    let answers = ChocolateAnswers::here();
    let batch = BatchAnswers::here();
    let pieces = memo(move || {
        let manner = state.manner.get();
        batch.read(|scaled| weigh::pieces(&scaled.pieces, manner))
    });
    let lines = memo(move || {
        let streams = [answers.filling.get(), answers.topping.get()];
        state.with(|sheet| {
            let of = |stream: usize| {
                let lines = sheet
                    .formula
                    .streams
                    .get(stream)
                    .map_or(0, |own| own.lines.len());
                (0..lines).map(move |line| LineAt { stream, line })
            };
            streams
                .into_iter()
                .flatten()
                .flat_map(of)
                .collect::<Vec<_>>()
        })
    });
    view! {
        <section class="card" aria-label="To weigh for this batch">
            <header>
                <h2>"To weigh for this batch"</h2>
                <span class="quiet">{pieces}</span>
            </header>
            <ul>
                <For each=move || lines.get() key=|at| *at let(at)>
                    <li><WeighLine at /></li>
                </For>
            </ul>
            <div class="body">
                <FieldBox field=STAYS />
            </div>
        </section>
    }
}
