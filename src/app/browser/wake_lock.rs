//! Wake lock: the screen stays on while the bench is shown, where the device allows it.

use std::cell::{Cell, RefCell};

use js_sys::{Array, Function, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

thread_local! {
    static WANTED: Cell<bool> = const { Cell::new(false) };
    static WATCHED: Cell<bool> = const { Cell::new(false) };
    static HELD: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

fn method(of: &JsValue, name: &str) -> Option<Function> {
    Reflect::get(of, &name.into()).ok()?.dyn_into().ok()
}

/// Requests that the screen stays on, now and each time the page is shown again.
pub fn request() {
    WANTED.set(true);
    if !WATCHED.replace(true) {
        std::mem::forget(window_event_listener_untyped("visibilitychange", |_| {
            hold();
        }));
        std::mem::forget(window_event_listener_untyped("focus", |_| hold()));
    }
    hold();
}

/// Releases the lock.
pub fn release() {
    WANTED.set(false);
    if let Some(held) = HELD.take()
        && let Some(release) = method(&held, "release")
    {
        // The browser may have released it already.
        let _released = release.call0(&held);
    }
}

/// Requests the lock; a refusal is ignored.
fn hold() {
    if !WANTED.get() || document().hidden() {
        return;
    }
    let asked = || -> Option<Promise> {
        let lock = Reflect::get(&window().navigator(), &"wakeLock".into()).ok()?;
        let request = method(&lock, "request")?;
        let screen = Array::of1(&"screen".into());
        request.apply(&lock, &screen).ok()?.dyn_into().ok()
    };
    if let Some(asked) = asked() {
        leptos::task::spawn_local(async move {
            if let Ok(held) = JsFuture::from(asked).await {
                HELD.replace(Some(held));
            }
        });
    }
}
