//! Reflect: objects of the browser that may be missing, by the names of their members.

use js_sys::{Array, Function, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};

/// A property, where there is one.
pub(super) fn get(of: &JsValue, name: &str) -> Option<JsValue> {
    let value = Reflect::get(of, &name.into()).ok()?;
    (!value.is_undefined() && !value.is_null()).then_some(value)
}

/// Calls a method, where there is one that does not refuse.
pub(super) fn call(of: &JsValue, name: &str, with: &Array) -> Option<JsValue> {
    let method: Function = get(of, name)?.dyn_into().ok()?;
    method.apply(of, with).ok()
}

/// Makes a thing of the browser's, where it has such.
pub(super) fn new(name: &str, with: &Array) -> Option<JsValue> {
    let maker: Function = get(&window(), name)?.dyn_into().ok()?;
    Reflect::construct(&maker, with).ok()
}
