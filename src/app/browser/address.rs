//! The address: reads, writes and watches the fragment after `#`; sets the window's title.

use leptos::prelude::*;
use wasm_bindgen::JsValue;

/// The current fragment, without its `#`.
pub fn fragment() -> String {
    let hash = window().location().hash().unwrap_or_default();
    hash.strip_prefix('#').unwrap_or_default().to_owned()
}

/// The address of the page, without any fragment.
pub fn page() -> String {
    let whole = window().location().href().unwrap_or_default();
    whole.split('#').next().unwrap_or_default().to_owned()
}

/// Puts a fragment, with its `#`, into the address without a step in the history.
pub fn replace(fragment: &str) {
    if let Ok(history) = window().history() {
        // A browser may refuse when it is asked too often; the page works on without.
        let _refused = history.replace_state_with_url(&JsValue::NULL, "", Some(fragment));
    }
}

/// Calls `callback` with the fragment each time the user or a link changes it.
pub fn watch(callback: impl Fn(String) + 'static) {
    let watching = window_event_listener(leptos::ev::hashchange, move |_| callback(fragment()));
    // The listener lives as long as the page.
    std::mem::forget(watching);
}

/// Names the window.
pub fn title(title: &str) {
    document().set_title(title);
}
