//! Local storage: texts under keys, and what other tabs put there.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::*;

use crate::storage::key::is_ours;
use crate::storage::record::is_newer;

/// Why storage did not take or give a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StorageTrouble {
    /// The browser keeps nothing for this page.
    Blocked,
    /// There is no room left.
    Full,
    /// What stands there is of a newer release, and stays.
    Newer,
}

fn store() -> Result<web_sys::Storage, StorageTrouble> {
    // Asked here first, because `LocalStorage::raw` stops the page where storage is blocked.
    match window().local_storage() {
        Ok(Some(_)) => Ok(LocalStorage::raw()),
        Ok(None) | Err(_) => Err(StorageTrouble::Blocked),
    }
}

/// The text under a key, if there is one.
///
/// # Errors
/// [`StorageTrouble::Blocked`].
pub fn get(key: &str) -> Result<Option<String>, StorageTrouble> {
    store()?.get_item(key).map_err(|_| StorageTrouble::Blocked)
}

/// Puts a text under a key, unless a newer release has written what stands there.
///
/// # Errors
/// [`StorageTrouble`] when it was not kept.
pub fn set(key: &str, text: &str) -> Result<(), StorageTrouble> {
    if get(key)?.is_some_and(|there| is_newer(&there, text)) {
        return Err(StorageTrouble::Newer);
    }
    store()?.set_item(key, text).map_err(|error| {
        // A browser with no room left says so by this name; any other is a refusal.
        let name = js_sys::Reflect::get(&error, &"name".into()).unwrap_or_default();
        if name.as_string().is_some_and(|name| name.contains("Quota")) {
            StorageTrouble::Full
        } else {
            StorageTrouble::Blocked
        }
    })
}

/// Whether nothing of ours has been kept here yet; not where storage is blocked.
pub fn is_untouched() -> bool {
    store().is_ok() && !keys().iter().any(|key| is_ours(key))
}

/// Takes the text under a key away.
pub fn remove(key: &str) {
    if let Ok(store) = store() {
        // Refused only where storage is blocked, and then there is nothing to take away.
        let _refused = store.remove_item(key);
    }
}

/// Calls `told` with the key, or none for all, each time another tab changes something.
pub fn watch(told: impl Fn(Option<String>) + 'static) {
    let watching = window_event_listener(leptos::ev::storage, move |event| told(event.key()));
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

/// How many characters stand under those keys.
pub fn length_of_all(is_one: impl Fn(&str) -> bool) -> usize {
    let mut length = 0_usize;
    for (key, text) in all() {
        if is_one(&key) {
            length = length.saturating_add(text.len());
        }
    }
    length
}
