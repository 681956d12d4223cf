//! Alarm: a sound, a shake and a notice, each where the device allows it.

use js_sys::{Array, Object, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::reflect::{call, get, new};

/// Asks once whether notices may be shown; a refusal does no harm.
pub fn ask() {
    let Some(notices) = get(&window(), "Notification") else {
        return;
    };
    let unasked = get(&notices, "permission").and_then(|word| word.as_string());
    if unasked.as_deref() == Some("default")
        && let Some(answer) = call(&notices, "requestPermission", &Array::new())
    {
        leptos::task::spawn_local(await_answer(answer));
    }
}

/// Waits for a promise and ignores its result.
async fn await_answer(answer: JsValue) {
    if let Ok(promise) = answer.dyn_into::<Promise>() {
        let _answered = JsFuture::from(promise).await;
    }
}

/// Rings, shakes, and shows a notice.
pub fn ring(what: &str) {
    let _sounded = sound();
    let shakes: Array = [400.0, 200.0, 400.0]
        .into_iter()
        .map(JsValue::from)
        .collect();
    let _shook = call(&window().navigator(), "vibrate", &Array::of1(&shakes));
    let _shown = notice(what);
}

/// Three short tones.
fn sound() -> Option<()> {
    let context = new("AudioContext", &Array::new())?;
    let from = get(&context, "currentTime")?.as_f64()?;
    for after in [0.0, 0.5, 1.0] {
        let tone = call(&context, "createOscillator", &Array::new())?;
        let pitch = get(&tone, "frequency")?;
        Reflect::set(&pitch, &"value".into(), &880.0.into()).ok()?;
        let end = get(&context, "destination")?;
        call(&tone, "connect", &Array::of1(&end))?;
        call(&tone, "start", &Array::of1(&(from + after).into()))?;
        call(&tone, "stop", &Array::of1(&(from + after + 0.25).into()))?;
    }
    Some(())
}

/// A notice, through the service worker where there is one: phones take it from nowhere else.
fn notice(what: &str) -> Option<()> {
    let notices = get(&window(), "Notification")?;
    if get(&notices, "permission")?.as_string()? != "granted" {
        return None;
    }
    let how = Object::new();
    Reflect::set(&how, &"tag".into(), &what.into()).ok()?;
    let workers = get(&window().navigator(), "serviceWorker")?;
    let ready: Promise = get(&workers, "ready")?.dyn_into().ok()?;
    let with = Array::of2(&what.into(), &how);
    leptos::task::spawn_local(async move {
        if let Ok(worker) = JsFuture::from(ready).await
            && let Some(shown) = call(&worker, "showNotification", &with)
        {
            await_answer(shown).await;
        }
    });
    Some(())
}
