//! What is wanted: the way of asking, and its numbers.

use leptos::prelude::*;

use super::BatchAnswers;
use super::fields::{PIECES, of_way};
use super::on_hand::OnHandPick;
use super::ways::choose;
use crate::app::part::{FieldBox, PickOne};
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::Way;
use crate::text::{name, tr};

/// What is wanted.
#[component]
pub fn WantedCard() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let way = memo(move || state.with(|sheet| sheet.batch.wanted.way()));
    let ways: Vec<(Way, String)> = Way::ALL
        .into_iter()
        .map(|way| (way, name::way(way).to_owned()))
        .collect();
    let says_pieces = move || matches!(way.get(), Way::Pieces | Way::Class);
    let boxes = move || {
        let fields = of_way(way.get()).iter();
        fields
            .map(|field| view! { <FieldBox field=*field /> })
            .collect_view()
    };
    view! {
        <section class="card" aria-label=tr!("Wanted")>
            <header>
                <h2>{tr!("Wanted")}</h2>
            </header>
            <div class="body">
                <PickOne id="way" label=tr!("Ask for it by") answers=ways holds=way chosen=move |way| choose(state, answers, way) />
                <Show when=move || way.get() == Way::OnHand>
                    <OnHandPick />
                </Show>
                <div class="boxes">{boxes}</div>
                <Show when=move || !says_pieces()>
                    <FieldBox field=PIECES />
                </Show>
            </div>
        </section>
    }
}
