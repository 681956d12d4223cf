//! First touch: the first tap, key or input of a visit.

use std::cell::Cell;
use std::mem;
use std::rc::Rc;

use leptos::prelude::*;

/// Calls `callback` at the first tap, key or input, once.
pub fn then(callback: impl FnOnce() + 'static) {
    let waiting = Rc::new(Cell::new(Some(callback)));
    for event in ["pointerdown", "keydown", "input"] {
        let waiting = Rc::clone(&waiting);
        mem::forget(window_event_listener_untyped(event, move |_| {
            if let Some(callback) = waiting.take() {
                callback();
            }
        }));
    }
}
