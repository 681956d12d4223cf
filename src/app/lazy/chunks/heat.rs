//! Heat.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Entry, PlaceChunk, chunk_view};
use crate::app::page::{HeatKeys, HeatPlace};

#[wasm_split(heat, wasm_split_path = ::leptos::wasm_split, fallible)]
fn heat() -> Entry<PlaceChunk> {
    Ok(PlaceChunk {
        place: || view! { <HeatPlace /> }.into_any(),
        key_figures: || view! { <HeatKeys /> }.into_any(),
    })
}

/// The view of the place.
pub fn place(arrived: fn()) -> AnyView {
    chunk_view!(heat.place, arrived)
}

/// Its key figures.
pub fn key_figures() -> AnyView {
    chunk_view!(heat.key_figures)
}
