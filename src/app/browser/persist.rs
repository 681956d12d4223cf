//! Persistent storage: asks the browser not to delete what is stored.

use leptos::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// Asks for storage that is not cleared when the device runs short.
pub fn ask() {
    let storage = window().navigator().storage();
    if storage.is_undefined() {
        return;
    }
    spawn_local(async move {
        if let Ok(asked) = storage.persist() {
            // Whether it is granted changes nothing here: everything is stored either way.
            let _granted = JsFuture::from(asked).await;
        }
    });
}
