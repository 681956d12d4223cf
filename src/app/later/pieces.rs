//! The pieces: one entry each. A new place is a new entry here.
#![allow(
    unsafe_code,
    reason = "the entry of a piece is a symbol of the binary, written by the attribute; nothing here is unsafe by hand"
)]

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::Piece;
use crate::app::dialog::Over;
use crate::app::page::{BatchKeys, BatchPlace, ChocolateKeys, ChocolatePlace};
use crate::app::state::Opened;

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_batch), fallible)]
pub fn batch() -> Piece {
    Ok(view! { <BatchPlace /> }.into_any())
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_batch_keys), fallible)]
pub fn batch_keys() -> Piece {
    Ok(view! { <BatchKeys /> }.into_any())
}

#[wasm_split(chocolate, wasm_split_path = ::leptos::wasm_split, preload(load_chocolate), fallible)]
pub fn chocolate() -> Piece {
    Ok(view! { <ChocolatePlace /> }.into_any())
}

#[wasm_split(chocolate, wasm_split_path = ::leptos::wasm_split, preload(load_chocolate_keys), fallible)]
pub fn chocolate_keys() -> Piece {
    Ok(view! { <ChocolateKeys /> }.into_any())
}

#[wasm_split(over, wasm_split_path = ::leptos::wasm_split, preload(load_over), fallible)]
pub fn over(opened: Opened) -> Piece {
    Ok(view! { <Over opened /> }.into_any())
}
