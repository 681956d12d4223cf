//! Offline: the service worker, and a new version that waits for a tap.

use js_sys::{Object, Reflect};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{ServiceWorkerContainer, ServiceWorkerRegistration, ServiceWorkerState};

/// Sets `waiting` once a newer version is installed beside the open one.
pub fn watch(waiting: RwSignal<bool>) {
    let Some(container) = container() else { return };
    spawn_local(async move {
        let Some(registration) = registration(&container).await else {
            return;
        };
        let is_newer = move || container.controller().is_some();
        waiting.set(registration.waiting().is_some() && is_newer());
        let found = registration.clone();
        registration.set_onupdatefound(Some(&for_ever(move || {
            let (Some(worker), is_newer) = (found.installing(), is_newer.clone()) else {
                return;
            };
            let installing = worker.clone();
            worker.set_onstatechange(Some(&for_ever(move || {
                waiting.set(installing.state() == ServiceWorkerState::Installed && is_newer());
            })));
        })));
    });
}

/// Sets `saved` to whether all files are cached for use offline, once that is known.
pub fn when_cached(saved: RwSignal<Option<bool>>) {
    let Some(container) = container() else {
        saved.set(Some(false));
        return;
    };
    spawn_local(async move {
        // The worker is ready only after it has cached every file.
        let is_saved = registration(&container).await.is_some();
        // The view that asked may have been removed meanwhile.
        let _gone = saved.try_set(Some(is_saved));
    });
}

/// Lets the waiting version take over, and opens the page with it.
pub fn take_over() {
    let Some(container) = container() else { return };
    container.set_oncontrollerchange(Some(&for_ever(|| drop(window().location().reload()))));
    spawn_local(async move {
        let word = Object::new();
        let wording = Reflect::set(&word, &"softcrumb".into(), &"take over".into());
        if let (Ok(_), Some(registration)) = (wording, registration(&container).await)
            && let Some(worker) = registration.waiting()
        {
            // The call fails only where the worker has ended; the next visit then has the new version.
            let _refused = worker.post_message(&word);
        }
    });
}

/// The browser's service workers; none where the page was not opened from a safe address.
fn container() -> Option<ServiceWorkerContainer> {
    let container = window().navigator().service_worker();
    (!container.is_undefined()).then_some(container)
}

async fn registration(container: &ServiceWorkerContainer) -> Option<ServiceWorkerRegistration> {
    let ready = JsFuture::from(container.ready().ok()?).await.ok()?;
    Some(ready.unchecked_into())
}

/// A listener that lives as long as the page.
fn for_ever(heard: impl Fn() + 'static) -> js_sys::Function {
    Closure::<dyn Fn()>::new(heard)
        .into_js_value()
        .unchecked_into()
}
