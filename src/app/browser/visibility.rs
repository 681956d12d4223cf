//! Visibility: whether an element is on the screen.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit};

/// Sets `is_seen` to whether `part` is on or near the screen, as long as both exist. Where the
/// browser cannot observe it, `is_seen` does not change.
pub fn watch(part: &Element, is_seen: RwSignal<bool>) {
    let callback = Closure::<dyn Fn(js_sys::Array)>::new(move |entries: js_sys::Array| {
        let last = entries.pop().unchecked_into::<IntersectionObserverEntry>();
        let is_here = last.is_intersecting();
        if is_seen
            .try_get_untracked()
            .is_some_and(|seen| seen != is_here)
        {
            is_seen.set(is_here);
        }
    });
    let near = IntersectionObserverInit::new();
    near.set_root_margin("64px");
    let callback = callback.into_js_value();
    if let Ok(observer) = IntersectionObserver::new_with_options(callback.unchecked_ref(), &near) {
        // The browser holds it as long as the element.
        observer.observe(part);
    }
}
