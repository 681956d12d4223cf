//! Day, and the timers of a bake, which ring in every place.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;
use wasm_bindgen_futures::spawn_local;

use super::{Draw, Entry, chunk_view};
use crate::app::browser::storage;
use crate::app::page::{BakeNotice, DayKeys, day_place, watch_timers};
use crate::app::state::AppState;
use crate::sheet::Place;
use crate::storage::key;

/// What the chunk holds.
pub struct DayChunk {
    place: Draw,
    key_figures: Draw,
    notice: Draw,
    watch_timers: fn(AppState),
}

#[wasm_split(day, wasm_split_path = ::leptos::wasm_split, fallible)]
fn day() -> Entry<DayChunk> {
    Ok(DayChunk {
        place: day_place,
        key_figures: || view! { <DayKeys /> }.into_any(),
        notice: || view! { <BakeNotice /> }.into_any(),
        watch_timers,
    })
}

/// The view of the place.
pub fn place(arrived: fn()) -> AnyView {
    chunk_view!(day.place, arrived)
}

/// Its key figures.
pub fn key_figures() -> AnyView {
    chunk_view!(day.key_figures)
}

/// The notice of a bake that was under way as the page began.
pub fn bake_notice() -> AnyView {
    chunk_view!(day.notice)
}

/// Finds whether a bake is under way that the place has not told of.
pub fn find_bake(state: AppState) {
    let bench = storage::get(key::BENCH).ok().flatten();
    let elsewhere = state.place.get_untracked() != Place::Day;
    state.bake_waits.set(bench.is_some() && elsewhere);
}

/// Starts the timers of a bake under way, wherever the user is. Where none runs, nothing is loaded.
pub fn start_timers(state: AppState) {
    let bench = storage::get(key::BENCH).ok().flatten();
    if bench.is_some_and(|bench| bench.contains(NOT_HEARD)) {
        spawn_local(async move {
            // Where the chunk cannot be loaded, the place reports it when it is opened.
            if let Ok(chunk) = day().await {
                (chunk.watch_timers)(state);
            }
        });
    }
}

/// What the record of a bake holds when one of its timers has still to ring.
const NOT_HEARD: &str = "\"heard\":false";
