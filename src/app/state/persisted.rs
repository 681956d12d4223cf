//! Records in the browser's storage: read, written, followed across tabs. What is in the way is
//! reported in one way.

use leptos::prelude::*;

use super::{AppState, SaveError};
use crate::app::browser::storage;
use crate::storage::key::Keyed;
use crate::storage::{Record, RecordError};

/// A reader that may not be loaded yet.
pub type LazyReader<T> = fn(&str) -> Option<Result<T, RecordError>>;

/// The value under a key; none where there is none, or its reader is not loaded yet.
///
/// # Errors
/// What storage says, or what is wrong with the record; it is left as it is.
pub fn stored_by<T>(key: &str, read: LazyReader<T>) -> Result<Option<T>, SaveError> {
    let text = storage::get(key).map_err(SaveError::Storage)?;
    let read = text.and_then(|text| read(&text)).transpose();
    read.map_err(|error| SaveError::Record(key.to_owned(), error))
}

/// The same by the record's own reader, which is loaded with whoever asks.
///
/// # Errors
/// What storage says, or what is wrong with the record; it is left as it is.
pub fn stored<T: Record>(key: &str) -> Result<Option<T>, SaveError> {
    stored_by(key, |text| Some(T::read(text)))
}

impl AppState {
    /// Reports why something was not saved or cannot be opened, once.
    pub fn report(self, error: SaveError) {
        if self
            .save_error
            .with_untracked(|wording| wording.as_ref() != Some(&error))
        {
            self.save_error.set(Some(error));
        }
    }

    /// What was read, with what was in the way reported.
    pub fn reported<T>(self, read: Result<Option<T>, SaveError>) -> Option<T> {
        read.unwrap_or_else(|error| {
            self.report(error);
            None
        })
    }

    /// Writes a text under a key, and reports what is in the way. Whether it was written.
    pub fn write_text(self, key: &str, text: &str) -> bool {
        let written = storage::set(key, text);
        if let Err(error) = written {
            self.report(SaveError::Storage(error));
        }
        written.is_ok()
    }

    /// Writes a record under a key, and reports what is in the way. Whether it was written.
    pub fn write_record(self, key: &str, record: &impl Record) -> bool {
        self.write_text(key, &record.write())
    }
}

/// A record under its own key: read when it is first asked for, and again when another tab writes.
pub struct Persisted<T: 'static> {
    value: RwSignal<T>,
    /// The text it was read from or written as: a long one is read but once.
    text: StoredValue<Option<String>>,
    state: AppState,
}

impl<T> Clone for Persisted<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Persisted<T> {}

impl<T: Keyed + Clone + Default + PartialEq + Send + Sync> Persisted<T> {
    /// Reads it; from then on it follows what other tabs write.
    pub fn new(state: AppState) -> Self {
        let persisted = Self {
            value: RwSignal::new(T::default()),
            text: StoredValue::new(None),
            state,
        };
        persisted.refresh();
        storage::watch(move |changed| {
            if changed.is_none_or(|changed| changed == T::KEY) {
                persisted.refresh();
            }
        });
        persisted
    }

    /// A copy of it; the caller follows its changes.
    pub fn get(self) -> T {
        self.value.get()
    }

    /// A copy of the current value.
    pub fn get_untracked(self) -> T {
        self.value.get_untracked()
    }

    /// Reads it, and follows it.
    pub fn with<O>(self, read: impl FnOnce(&T) -> O) -> O {
        self.value.with(read)
    }

    /// Reads it once.
    pub fn with_untracked<O>(self, read: impl FnOnce(&T) -> O) -> O {
        self.value.with_untracked(read)
    }

    /// Changes it as a step that can be undone, and writes it.
    pub fn change(self, change: impl FnOnce(&mut T)) {
        let before = self.get_untracked();
        let mut after = before.clone();
        change(&mut after);
        self.put(after.clone());
        let put = move |value| self.put(value);
        self.state.note_step(T::KEY, [before, after], put);
    }

    fn put(self, value: T) {
        self.value.set(value);
        self.state.write_later(T::KEY, move || {
            self.write();
        });
    }

    /// Changes it, and writes it. Whether it was written.
    pub fn update(self, change: impl FnOnce(&mut T)) -> bool {
        self.value.update(change);
        self.write()
    }

    /// Writes it as it is. Whether it was written.
    fn write(self) -> bool {
        let text = self.value.with_untracked(Record::write);
        let written = self.state.write_text(T::KEY, &text);
        if written {
            self.text.set_value(Some(text));
        }
        written
    }

    /// Reads it again, where something else has written it. What cannot be opened is reported, and
    /// the value read before is kept.
    pub fn refresh(self) {
        match storage::get(T::KEY) {
            Ok(text) if self.text.with_value(|before| *before == text) => {}
            Ok(text) => match text.as_deref().map(T::read).transpose() {
                Ok(read) => {
                    self.state.forget_changes(T::KEY);
                    self.value.set(read.unwrap_or_default());
                    self.text.set_value(text);
                }
                Err(error) => self
                    .state
                    .report(SaveError::Record(T::KEY.to_owned(), error)),
            },
            Err(error) => self.state.report(SaveError::Storage(error)),
        }
    }
}
