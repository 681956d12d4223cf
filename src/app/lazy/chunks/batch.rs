//! Batch.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Entry, PlaceChunk, chunk_view};
use crate::app::page::{BatchKeys, BatchPlace};

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, fallible)]
fn batch() -> Entry<PlaceChunk> {
    Ok(PlaceChunk {
        place: || view! { <BatchPlace /> }.into_any(),
        key_figures: || view! { <BatchKeys /> }.into_any(),
    })
}

/// The view of the place.
pub fn place(arrived: fn()) -> AnyView {
    chunk_view!(batch.place, arrived)
}

/// Its key figures.
pub fn key_figures() -> AnyView {
    chunk_view!(batch.key_figures)
}
