//! Chocolate.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Entry, PlaceChunk, chunk_view};
use crate::app::page::{ChocolateKeys, ChocolatePlace};

#[wasm_split(chocolate, wasm_split_path = ::leptos::wasm_split, fallible)]
fn chocolate() -> Entry<PlaceChunk> {
    Ok(PlaceChunk {
        place: || view! { <ChocolatePlace /> }.into_any(),
        key_figures: || view! { <ChocolateKeys /> }.into_any(),
    })
}

/// The view of the place.
pub fn place(arrived: fn()) -> AnyView {
    chunk_view!(chocolate.place, arrived)
}

/// Its key figures.
pub fn key_figures() -> AnyView {
    chunk_view!(chocolate.key_figures)
}
