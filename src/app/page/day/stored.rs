//! What the day keeps in storage, read and written; what stands in the way is said.

use leptos::prelude::*;

use crate::app::browser::storage;
use crate::app::state::{SaveError, State};
use crate::sheet::record::RecordError;

/// Reads a record; says so where it cannot be opened.
pub fn read<T>(key: &str, read: fn(&str) -> Result<T, RecordError>, state: State) -> Option<T> {
    let text = storage::get(key).ok().flatten()?;
    match read(&text) {
        Ok(record) => Some(record),
        Err(error) => {
            state.keeps.set(Some(SaveError::Record(key.to_owned(), error)));
            None
        }
    }
}

/// SaveError a record; says so where it cannot be kept. Whether it was.
pub fn keep(key: &str, text: &str, state: State) -> bool {
    let kept = storage::set(key, text);
    if let Err(trouble) = kept {
        state.keeps.set(Some(SaveError::Storage(trouble)));
    }
    kept.is_ok()
}
