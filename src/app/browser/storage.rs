//! Local storage: texts under keys, and what other tabs put there.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::*;

use crate::storage::key::is_ours;
use crate::storage::record::is_newer;

/// Why a text could not be stored or read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StorageError {
    /// The browser stores nothing for this page.
    Blocked,
    /// The storage is full.
    Full,
    /// A newer release has written the text there, which stays.
    Newer,
}

fn store() -> Result<web_sys::Storage, StorageError> {
    // The host that draws the first screen stores nothing.
    if cfg!(not(target_arch = "wasm32")) {
        return Err(StorageError::Blocked);
    }
    // The access is tried here first, because `LocalStorage::raw` panics where storage is blocked.
    match window().local_storage() {
        Ok(Some(_)) => Ok(LocalStorage::raw()),
        Ok(None) | Err(_) => Err(StorageError::Blocked),
    }
}

/// The text under a key, if there is one.
///
/// # Errors
/// [`StorageError::Blocked`].
pub fn get(key: &str) -> Result<Option<String>, StorageError> {
    store()?.get_item(key).map_err(|_| StorageError::Blocked)
}

/// Stores a text under a key, unless a newer release has written the text there.
///
/// # Errors
/// [`StorageError`] when it was not stored.
pub fn set(key: &str, text: &str) -> Result<(), StorageError> {
    if get(key)?.is_some_and(|there| is_newer(&there, text)) {
        return Err(StorageError::Newer);
    }
    store()?.set_item(key, text).map_err(|error| {
        // Browsers report a full storage by this name; any other error is a refusal.
        let name = js_sys::Reflect::get(&error, &"name".into()).unwrap_or_default();
        if name.as_string().is_some_and(|name| name.contains("Quota")) {
            StorageError::Full
        } else {
            StorageError::Blocked
        }
    })
}

/// Whether no key of ours is stored yet; `false` where storage is blocked.
pub fn is_untouched() -> bool {
    let answers = store().is_ok_and(|store| store.length().is_ok());
    answers && !keys().iter().any(|key| is_ours(key))
}

/// Removes the text under a key.
pub fn remove(key: &str) {
    if let Ok(store) = store() {
        // The call fails only where storage is blocked, and then there is nothing to remove.
        let _refused = store.remove_item(key);
    }
}

/// Calls `callback` with the key, or none for all, each time another tab changes something.
pub fn watch(callback: impl Fn(Option<String>) + 'static) {
    let watching = window_event_listener(leptos::ev::storage, move |event| callback(event.key()));
    std::mem::forget(watching);
}

/// Every key.
pub fn keys() -> Vec<String> {
    let Ok(store) = store() else {
        return Vec::new();
    };
    let count = store.length().unwrap_or_default();
    (0..count)
        .filter_map(|place| store.key(place).ok().flatten())
        .collect()
}

/// Every key with its text.
pub fn all() -> Vec<(String, String)> {
    let keys = keys().into_iter();
    keys.filter_map(|key| Some((key.clone(), get(&key).ok().flatten()?)))
        .collect()
}

/// Bytes stored under the matching keys.
pub fn length_of_all(is_one: impl Fn(&str) -> bool) -> usize {
    let mut length = 0_usize;
    for (key, text) in all() {
        if is_one(&key) {
            length = length.saturating_add(text.len());
        }
    }
    length
}
