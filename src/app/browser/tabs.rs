//! Tabs: a name that this tab holds for as long as it is open, and those that any tab holds.

use js_sys::{Array, Function, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The browser's locks, and one of their functions.
fn locks(name: &str) -> Option<(JsValue, Function)> {
    let locks = Reflect::get(&window().navigator(), &"locks".into()).ok()?;
    let function = Reflect::get(&locks, &name.into()).ok()?.dyn_into().ok()?;
    Some((locks, function))
}

/// Holds a name until the tab is closed or left. Where the browser cannot, nobody holds any.
pub fn hold(name: &str) {
    if let Some((locks, request)) = locks("request") {
        let for_ever = Closure::<dyn Fn() -> Promise>::new(|| Promise::new(&mut |_, _| ()));
        let asked = request.call2(&locks, &name.into(), for_ever.as_ref());
        for_ever.forget();
        drop(asked);
    }
}

/// The names that any tab holds.
pub async fn held() -> Vec<String> {
    let asked = || -> Option<Promise> {
        let (locks, query) = locks("query")?;
        query.call0(&locks).ok()?.dyn_into().ok()
    };
    let Some(asked) = asked() else {
        return Vec::new();
    };
    let all = JsFuture::from(asked).await.unwrap_or_default();
    let held = Reflect::get(&all, &"held".into()).unwrap_or_default();
    let name = |one: JsValue| Reflect::get(&one, &"name".into()).ok()?.as_string();
    Array::from(&held).iter().filter_map(name).collect()
}
