//! The place: how much, what to weigh, and rows that say the rest.

use leptos::prelude::*;

use super::BatchContext;
use super::baked_card::BakedCard;
use super::dividing::DivideCard;
use super::losses::LossesCard;
use super::lower_cards::LowerCards;
use super::target::TargetRow;
use super::weighing::{ScaleRow, Weighing};
use crate::app::page::HEADING;
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::BatchCaution;
use crate::sheet::Place;
use crate::text::{ErrorText, caution, name, tr};

/// The place for the batch and its tins.
#[component]
pub fn BatchPlace() -> impl IntoView {
    let context = BatchContext::from_context();
    let current = memo(move || context.is_scaled());
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Batch)}</h1>
        <div class="newspaper">
            <TargetRow />
            <Why />
            <Show when=move || current.get()>
                <ScaleRow />
                <Weighing />
                <DivideCard />
                <BakedCard />
            </Show>
            <LowerCards />
            <Doubts />
            <LossesCard />
        </div>
    }
}

/// Why there is no batch, where there is none.
#[component]
fn Why() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let why = memo(move || {
        let options = state.options.get();
        context.results.with(|results| {
            let error = results.scaled.as_ref().err()?;
            Some(error.sentence(options))
        })
    });
    move || {
        why.get().map(|why| {
            view! {
                <section class="advice" role="status">
                    <h2>{tr!("No batch can be worked out")}</h2>
                    <p>{why}</p>
                </section>
            }
        })
    }
}

/// The cautions about losses.
#[component]
fn Doubts() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let doubts = memo(move || {
        let cautions = context.read_scaled(|scaled| scaled.cautions.clone());
        cautions.unwrap_or_default()
    });
    let card = move |doubt: BatchCaution| {
        let advice = memo(move || Some(caution::batch(&doubt, state.options.get())));
        view! { <AdviceCard title=tr!("Check the losses") advice /> }
    };
    move || doubts.get().into_iter().map(card).collect_view()
}
