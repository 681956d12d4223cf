//! The cards of a visitor: what to weigh first, and what is done with it once that is on the screen.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry, chunk_view};
use crate::app::lazy::lazy_view::{lazy_view, now_or_never};
use crate::app::page::{
    BatchKeys, NotYetForTin, OwnTin, StepList, VisitCards, VisitNotice, VisitSteps, WeighingHelp,
};

/// What the first chunk holds.
pub struct VisitChunk {
    cards: Draw,
    key_figures: Draw,
    notice: Draw,
}

#[wasm_split(visit_weights, wasm_split_path = ::leptos::wasm_split, fallible)]
fn visit_weights() -> Entry<VisitChunk> {
    Ok(VisitChunk {
        cards: || view! { <VisitCards /> }.into_any(),
        key_figures: || view! { <BatchKeys /> }.into_any(),
        notice: || view! { <VisitNotice /> }.into_any(),
    })
}

/// What the second holds.
pub struct VisitRestChunk {
    steps: fn(StepList) -> AnyView,
    help: Draw,
    own_tin: Draw,
    not_yet: Draw,
}

#[wasm_split(visit_rest, wasm_split_path = ::leptos::wasm_split, fallible)]
fn visit_rest() -> Entry<VisitRestChunk> {
    Ok(VisitRestChunk {
        steps: |list| view! { <VisitSteps list /> }.into_any(),
        help: || view! { <WeighingHelp /> }.into_any(),
        own_tin: || view! { <OwnTin /> }.into_any(),
        not_yet: || view! { <NotYetForTin /> }.into_any(),
    })
}

/// Loads what shows a formula opened by a link. Where that fails, the view offers to try again.
pub async fn load_visit() {
    let _tried = visit_weights().await;
}

/// Loads what else a visitor needs; `false` where that fails.
pub async fn load_visit_rest() -> bool {
    visit_rest().await.is_ok()
}

/// The first view of a formula opened by a link.
pub fn visit() -> AnyView {
    chunk_view!(visit_weights.cards)
}

/// The key figures of such a view: those of what is weighed.
pub fn visit_keys() -> AnyView {
    chunk_view!(visit_weights.key_figures)
}

/// The notice of a formula opened by a link.
pub fn visit_notice() -> AnyView {
    chunk_view!(visit_weights.notice)
}

/// The steps of a visitor, who then know them.
pub fn visit_steps(list: StepList) -> AnyView {
    lazy_view(
        || Box::pin(load_visit_rest()),
        Box::new(move || {
            let chunk = now_or_never(visit_rest())?.ok()?;
            Some((chunk.steps)(list))
        }),
        || (),
    )
}

/// What helps to weigh where the scale does not.
pub fn weighing_help() -> AnyView {
    chunk_view!(visit_rest.help)
}

/// The visitor's own tin.
pub fn own_tin() -> AnyView {
    chunk_view!(visit_rest.own_tin)
}

/// That the weights are not yet for the visitor's own tin.
pub fn not_yet_for_tin() -> AnyView {
    chunk_view!(visit_rest.not_yet)
}
