//! The copy of a link that is being baked: stored beside its bake, so that a reload or another page leads back to it.
//!
//! A bake of a copy has no formula of the shelf. Once the copy is kept, the bake is one of that formula.

use std::sync::Arc;

use leptos::prelude::*;

use super::active_bake;
use crate::app::browser::storage;
use crate::app::lazy::records;
use crate::app::state::{AppState, stored};
use crate::sheet::day::{Bench, DaySettings};
use crate::sheet::{Id, Sheet};
use crate::storage::key;

/// Stores the open copy, which is being baked, and its plan settings.
pub fn store(state: AppState, settings: &DaySettings) {
    if let Some(text) = records::write_sheet(&untrack(|| state.saved())) {
        state.write_text(key::BENCH_COPY, &text);
        store_settings(state, settings);
    }
}

/// Stores the plan settings of the copy that is being baked.
pub fn store_settings(state: AppState, settings: &DaySettings) {
    state.write_record(key::BENCH_DAY, settings);
}

/// Removes what is stored of a copy.
pub fn remove() {
    storage::remove(key::BENCH_COPY);
    storage::remove(key::BENCH_DAY);
}

/// The plan settings of the copy that is being baked.
pub fn settings(state: AppState) -> Option<DaySettings> {
    state.reported(stored(key::BENCH_DAY))
}

/// Opens the copy that is being baked. Returns whether it could be.
pub fn open(state: AppState) -> bool {
    let copy = storage::get(key::BENCH_COPY).ok().flatten();
    match copy.and_then(|text| records::sheet(&text)) {
        Some(Ok(sheet)) => {
            state.open_copy(sheet);
            true
        }
        Some(Err(_)) | None => false,
    }
}

/// A copy that is kept while it is baked takes its bake along.
pub fn follow(state: AppState, bench: RwSignal<Option<Bench>>, shown: RwSignal<DaySettings>) {
    Effect::new(move |before: Option<(Option<Id>, Arc<Sheet>)>| {
        let now = (state.open_id.get(), state.saved());
        if let (Some((None, copy)), (Some(id), sheet)) = (before, &now)
            && copy.is_stored_as(sheet)
            && let Some(mut taken) = bench.get_untracked()
            && taken.bake.is_of(None, &copy.name)
        {
            if let Some(settings) = settings(state) {
                state.write_record(&key::of_day(id), &settings);
                shown.set(settings);
            }
            taken.bake.formula = Some(id.clone());
            taken.bake.name.clone_from(&sheet.name);
            bench.set(Some(taken));
            if active_bake::save(state).is_ok() {
                remove();
            }
        }
        now
    });
}
