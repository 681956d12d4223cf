//! Records are read and written by a chunk: a first visit has none, and writes none before its first
//! answer.
//!
//! Every function returns none where the chunk is not loaded; that never means that a record is
//! absent.

use wasm_bindgen_futures::spawn_local;

use super::chunks::storage::{StorageChunk, storage};
use super::lazy_view::now_or_never;
use crate::app::state::AppState;
use crate::sheet::{Id, Kitchens, Moment, Settings, Sheet, Shelf};
use crate::storage::record::RecordError;

/// The result of reading a record.
type Read<T> = Option<Result<T, RecordError>>;

/// Loads what reads records; `false` where that fails.
pub async fn load() -> bool {
    storage().await.is_ok()
}

/// The functions of the chunk, where it is loaded.
fn chunk() -> Option<StorageChunk> {
    now_or_never(storage())?.ok()
}

/// Whether the chunk is loaded; asks for it where it is not.
pub fn are_here() -> bool {
    chunk().is_some()
}

/// Runs `act` as soon as records can be read: at once where they can.
pub fn then(act: impl FnOnce() + 'static) {
    if are_here() {
        act();
    } else {
        spawn_local(async move {
            if load().await {
                act();
            }
        });
    }
}

/// Writes a formula.
pub fn write_sheet(sheet: &Sheet) -> Option<String> {
    Some((chunk()?.write_sheet)(sheet))
}

/// Writes the index.
pub fn write_shelf(shelf: &Shelf) -> Option<String> {
    Some((chunk()?.write_shelf)(shelf))
}

/// Reads a formula.
pub fn sheet(text: &str) -> Read<Sheet> {
    Some((chunk()?.read_sheet)(text))
}

/// Reads the index.
pub fn shelf(text: &str) -> Read<Shelf> {
    Some((chunk()?.read_shelf)(text))
}

/// Reads the settings.
pub fn settings(text: &str) -> Read<Settings> {
    Some((chunk()?.read_settings)(text))
}

/// Reads the kitchens.
pub fn kitchens(text: &str) -> Read<Kitchens> {
    Some((chunk()?.read_kitchens)(text))
}

/// Makes an index from the records that are there.
pub fn repair(records: &[(Id, String)], now: Moment) -> Option<Shelf> {
    Some((chunk()?.repair_shelf)(records, now))
}

/// Writes the trial's record, or removes it where no trial is on.
pub fn write_trial(state: AppState) {
    if let Some(chunk) = chunk() {
        (chunk.write_trial)(state);
    }
}

/// Looks for a waiting trial of the open formula.
pub fn find_trial(state: AppState) {
    if let Some(chunk) = chunk() {
        (chunk.find_trial)(state);
    }
}

/// Writes the record of the kitchens.
pub fn write_kitchens(state: AppState) {
    if let Some(chunk) = chunk() {
        (chunk.write_kitchens)(state);
    }
}

/// Takes over the kitchens that another tab has written.
pub fn follow_kitchens(state: AppState, theirs: Kitchens) {
    if let Some(chunk) = chunk() {
        (chunk.follow_kitchens)(state, theirs);
    }
}
