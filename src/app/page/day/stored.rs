//! What the day keeps in storage, read and written; what stands in the way is said.

use leptos::prelude::*;

use crate::app::browser::storage;
use crate::app::state::{AppState, SaveError};
use crate::sheet::record::RecordError;

/// Reads a record; says so where it cannot be opened.
pub fn read<T>(key: &str, read: fn(&str) -> Result<T, RecordError>, state: AppState) -> Option<T> {
    let text = storage::get(key).ok().flatten()?;
    match read(&text) {
        Ok(record) => Some(record),
        Err(error) => {
            state
                .save_error
                .set(Some(SaveError::Record(key.to_owned(), error)));
            None
        }
    }
}

/// `SaveError` a record; says so where it cannot be kept. Whether it was.
pub fn keep(key: &str, text: &str, state: AppState) -> bool {
    let saved = storage::set(key, text);
    if let Err(trouble) = saved {
        state.save_error.set(Some(SaveError::Storage(trouble)));
    }
    saved.is_ok()
}
