//! Presses: how often the user has touched the page or a key.

use std::cell::Cell;

use leptos::prelude::*;

thread_local! {
    static COUNT: Cell<u32> = Cell::new({
        for event in ["pointerdown", "keydown"] {
            let count = |_| COUNT.with(|count| count.set(count.get().wrapping_add(1)));
            // The listener lives as long as the page.
            std::mem::forget(window_event_listener_untyped(event, count));
        }
        0
    });
}

/// How often the user has pressed something, counted from the first call.
pub fn presses() -> u32 {
    COUNT.with(Cell::get)
}
