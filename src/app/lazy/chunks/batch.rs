//! Batch, and the cards of a visitor, which show the batch.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry, chunk_view};
use crate::app::page::{BatchKeys, BatchPlace, VisitCards, VisitNotice};

/// What the chunk holds.
pub struct BatchChunk {
    place: Draw,
    key_figures: Draw,
    visit: Draw,
    notice: Draw,
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, fallible)]
fn batch() -> Entry<BatchChunk> {
    Ok(BatchChunk {
        place: || view! { <BatchPlace /> }.into_any(),
        key_figures: || view! { <BatchKeys /> }.into_any(),
        visit: || view! { <VisitCards /> }.into_any(),
        notice: || view! { <VisitNotice /> }.into_any(),
    })
}

/// Loads what shows a formula opened by a link. Where that fails, the view offers to try again.
pub async fn load_visit() {
    let _tried = batch().await;
}

/// The view of the place.
pub fn place(arrived: fn()) -> AnyView {
    chunk_view!(batch.place, arrived)
}

/// Its key figures.
pub fn key_figures() -> AnyView {
    chunk_view!(batch.key_figures)
}

/// The first view of a formula opened by a link.
pub fn visit() -> AnyView {
    chunk_view!(batch.visit)
}

/// The notice of a formula opened by a link.
pub fn visit_notice() -> AnyView {
    chunk_view!(batch.notice)
}
