//! Records: reading what is kept is a piece of its own, which a first visit begins without.
//!
//! Everything here gives none where the piece is not loaded; nothing may be taken as absent then.

use wasm_bindgen_futures::spawn_local;

use super::entry_points;
use super::lazy_view::at_once;
use crate::app::state::AppState;
use crate::sheet::record::RecordError;
use crate::sheet::{Id, Kitchens, Moment, Settings, Sheet, Shelf};

/// What reading a record gives.
type Read<T> = Option<Result<T, RecordError>>;

/// Loads what reads records; whether it came.
pub async fn load() -> bool {
    entry_points::load_read_sheet().await.is_ok()
        && entry_points::load_read_shelf().await.is_ok()
        && entry_points::load_read_settings().await.is_ok()
        && entry_points::load_repair().await.is_ok()
        && entry_points::load_keep_trial().await.is_ok()
        && entry_points::load_find_trial().await.is_ok()
        && entry_points::load_keep_kitchens().await.is_ok()
        && entry_points::load_follow_kitchens().await.is_ok()
        && entry_points::load_read_kitchens().await.is_ok()
}

/// Whether that is loaded; asks for it where it is not.
pub fn are_here() -> bool {
    matches!(at_once(entry_points::load_read_kitchens()), Some(Ok(())))
}

/// Does something as soon as records can be read: at once where they can.
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

/// Reads a formula.
pub fn sheet(text: &str) -> Read<Sheet> {
    at_once(entry_points::read_sheet(text))?.ok()
}

/// Reads the index.
pub fn shelf(text: &str) -> Read<Shelf> {
    at_once(entry_points::read_shelf(text))?.ok()
}

/// Reads the settings.
pub fn settings(text: &str) -> Read<Settings> {
    at_once(entry_points::read_settings(text))?.ok()
}

/// Reads the kitchens.
pub fn kitchens(text: &str) -> Read<Kitchens> {
    at_once(entry_points::read_kitchens(text))?.ok()
}

/// An index made from the records that are there.
pub fn repair(records: &[(Id, String)], now: Moment) -> Option<Shelf> {
    at_once(entry_points::repair(records, now))?.ok()
}

/// Has the record of the trial be as the trial is.
pub fn keep_trial(state: AppState) {
    let _done = at_once(entry_points::keep_trial(state));
}

/// Looks for a trial of the open formula that was left.
pub fn find_trial(state: AppState) {
    let _done = at_once(entry_points::find_trial(state));
}

/// `SaveError` the kitchens as they stand.
pub fn keep_kitchens(state: AppState) {
    let _done = at_once(entry_points::keep_kitchens(state));
}

/// Takes in the kitchens as another tab has kept them.
pub fn follow_kitchens(state: AppState, theirs: Kitchens) {
    let _done = at_once(entry_points::follow_kitchens(state, theirs));
}
