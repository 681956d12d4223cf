//! In sight: whether a part of the page is on the screen.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit};

/// `SaveError` `is_seen` in step with whether `part` is on the screen or next to it, for as long as both
/// are there. Where the browser cannot tell, it stays as it is.
pub fn watch(part: &Element, is_seen: RwSignal<bool>) {
    let told = Closure::<dyn Fn(js_sys::Array)>::new(move |entries: js_sys::Array| {
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
    let told = told.into_js_value();
    if let Ok(observer) = IntersectionObserver::new_with_options(told.unchecked_ref(), &near) {
        // The browser keeps it for as long as the part.
        observer.observe(part);
    }
}
