//! Tabs: a lock that this tab holds while it is open, and callbacks for when another tab releases
//! its own.

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

/// Holds the lock `name` until the tab is closed or left. Without locks in the browser, it does
/// nothing.
pub fn hold(name: &str) {
    let for_ever = Closure::once_into_js(|| Promise::new(&mut |_, _| ()));
    let _has_locks = request(name, &for_ever);
}

/// Calls `act` as soon as no tab holds the lock `name`: at once where none does. The browser
/// releases the lock of a tab some time after that was closed, reloaded or has crashed.
pub fn once_free(name: &str, act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(act);
    if !request(name, &act) {
        // Without locks there is nothing to wait for; `act` returns nothing.
        let _given = act.unchecked_ref::<Function>().call0(&JsValue::NULL);
    }
}

/// Asks the browser for a lock; `granted` is called when it is this tab's turn, and the lock is
/// held until its promise is settled. Returns whether the browser has locks.
fn request(name: &str, granted: &JsValue) -> bool {
    let asked = || -> Option<Promise> {
        let locks = Reflect::get(&window().navigator(), &"locks".into()).ok()?;
        let request = Reflect::get(&locks, &"request".into()).ok()?;
        let request: &Function = request.dyn_ref()?;
        request
            .call2(&locks, &name.into(), granted)
            .ok()?
            .dyn_into()
            .ok()
    };
    asked().is_some()
}
