//! The pieces: one entry each. A new place is a new entry here.
#![allow(
    unsafe_code,
    reason = "the entry of a piece is a symbol of the binary, written by the attribute; nothing here is unsafe by hand"
)]

use leptos::prelude::*;
use leptos::wasm_split::{SplitLoaderError, wasm_split};

use super::lazy_view::Piece;
use crate::app::dialog::{HandMore, Over};
use crate::app::page::{
    BatchKeys, BatchPlace, ChocolateKeys, ChocolatePlace, Compare, DayKeys, FormulaRest, HeatKeys,
    HeatPlace, LowerCards, VisitCards, day_place, watch_timers,
};
use crate::app::part::TrialBar;
use crate::app::state::{AppState, DialogKind};
use crate::sheet::link::{self, LinkError};
use crate::sheet::record::{self, RecordError};
use crate::sheet::{Id, Kitchens, Moment, Settings, Sheet, Shelf};

/// What an entry gives that draws nothing.
type Given<T> = Result<T, SplitLoaderError>;

#[wasm_split(formula, wasm_split_path = ::leptos::wasm_split, preload(load_formula_rest), fallible)]
pub fn formula_rest() -> Piece {
    Ok(view! { <FormulaRest /> }.into_any())
}

#[wasm_split(formula, wasm_split_path = ::leptos::wasm_split, preload(load_trial_bar), fallible)]
pub fn trial_bar() -> Piece {
    Ok(view! { <TrialBar /> }.into_any())
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_batch), fallible)]
pub fn batch() -> Piece {
    Ok(view! { <BatchPlace /> }.into_any())
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_batch_keys), fallible)]
pub fn batch_keys() -> Piece {
    Ok(view! { <BatchKeys /> }.into_any())
}

#[wasm_split(heat, wasm_split_path = ::leptos::wasm_split, preload(load_heat), fallible)]
pub fn heat() -> Piece {
    Ok(view! { <HeatPlace /> }.into_any())
}

#[wasm_split(heat, wasm_split_path = ::leptos::wasm_split, preload(load_heat_keys), fallible)]
pub fn heat_keys() -> Piece {
    Ok(view! { <HeatKeys /> }.into_any())
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_class), fallible)]
pub fn class() -> Piece {
    Ok(view! { <LowerCards /> }.into_any())
}

#[wasm_split(batch, wasm_split_path = ::leptos::wasm_split, preload(load_visit), fallible)]
pub fn visit() -> Piece {
    Ok(view! { <VisitCards /> }.into_any())
}

#[wasm_split(over, wasm_split_path = ::leptos::wasm_split, preload(load_hand), fallible)]
pub fn hand() -> Piece {
    Ok(view! { <HandMore /> }.into_any())
}

#[wasm_split(chocolate, wasm_split_path = ::leptos::wasm_split, preload(load_chocolate), fallible)]
pub fn chocolate() -> Piece {
    Ok(view! { <ChocolatePlace /> }.into_any())
}

#[wasm_split(chocolate, wasm_split_path = ::leptos::wasm_split, preload(load_chocolate_keys), fallible)]
pub fn chocolate_keys() -> Piece {
    Ok(view! { <ChocolateKeys /> }.into_any())
}

#[wasm_split(day, wasm_split_path = ::leptos::wasm_split, preload(load_day), fallible)]
pub fn day() -> Piece {
    Ok(day_place())
}

#[wasm_split(day, wasm_split_path = ::leptos::wasm_split, preload(load_day_keys), fallible)]
pub fn day_keys() -> Piece {
    Ok(view! { <DayKeys /> }.into_any())
}

#[wasm_split(day, wasm_split_path = ::leptos::wasm_split, preload(load_timers), fallible)]
pub fn timers(state: AppState) -> Given<()> {
    watch_timers(state);
    Ok(())
}

#[wasm_split(over, wasm_split_path = ::leptos::wasm_split, preload(load_over), fallible)]
pub fn over(opened: DialogKind) -> Piece {
    Ok(view! { <Over opened /> }.into_any())
}

#[wasm_split(over, wasm_split_path = ::leptos::wasm_split, preload(load_compare), fallible)]
pub fn compare() -> Piece {
    Ok(view! { <Compare /> }.into_any())
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_read_link), fallible)]
pub fn read_link(text: &str) -> Given<Result<Sheet, LinkError>> {
    Ok(link::read(text))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_write_link), fallible)]
pub fn write_link(sheet: &Sheet) -> Given<Result<String, LinkError>> {
    Ok(link::write(sheet))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_read_sheet), fallible)]
pub fn read_sheet(text: &str) -> Given<Result<Sheet, RecordError>> {
    Ok(record::read_sheet(text))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_read_shelf), fallible)]
pub fn read_shelf(text: &str) -> Given<Result<Shelf, RecordError>> {
    Ok(record::read_shelf(text))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_read_settings), fallible)]
pub fn read_settings(text: &str) -> Given<Result<Settings, RecordError>> {
    Ok(record::read_settings(text))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_read_kitchens), fallible)]
pub fn read_kitchens(text: &str) -> Given<Result<Kitchens, RecordError>> {
    Ok(record::read_kitchens(text))
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_keep_trial), fallible)]
pub fn keep_trial(state: AppState) -> Given<()> {
    state.keep_trial_record();
    Ok(())
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_find_trial), fallible)]
pub fn find_trial(state: AppState) -> Given<()> {
    state.look_for_trial();
    Ok(())
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_keep_kitchens), fallible)]
pub fn keep_kitchens(state: AppState) -> Given<()> {
    state.keep_kitchens();
    Ok(())
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_follow_kitchens), fallible)]
pub fn follow_kitchens(state: AppState, theirs: Kitchens) -> Given<()> {
    state.follow_kitchens(theirs);
    Ok(())
}

#[wasm_split(kept, wasm_split_path = ::leptos::wasm_split, preload(load_repair), fallible)]
pub fn repair(records: &[(Id, String)], now: Moment) -> Given<Shelf> {
    let texts = records.iter().map(|(id, text)| (id.clone(), text.as_str()));
    Ok(Shelf::default().repair(texts, now).shelf)
}
