//! The clock: today's date, this moment, and a while later.

use std::mem;
use std::time::Duration;

use js_sys::{Date, Promise};
use leptos::prelude::*;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

use crate::sheet::civil::ahead_of;

/// Today where the device is, as 2031-05-09.
pub fn today() -> String {
    let now = Date::new_0();
    format!(
        "{:04}-{:02}-{:02}",
        now.get_full_year(),
        now.get_month().saturating_add(1),
        now.get_date()
    )
}

/// The day of a moment, in milliseconds since 1970, as this browser writes it.
pub fn day(milliseconds: f64) -> String {
    let date = Date::new(&milliseconds.into());
    date.to_locale_date_string(super::locale::tag(), &js_sys::Object::new())
        .into()
}

/// Milliseconds since 1970, UTC.
pub fn milliseconds() -> f64 {
    Date::now()
}

/// Minutes the clock on this wall is ahead of UTC at a moment, in milliseconds since 1970.
pub fn minutes_ahead(milliseconds: f64) -> i64 {
    ahead_of(Date::new(&milliseconds.into()).get_timezone_offset())
}

/// Runs `callback` every second until the view that asks for it is removed.
pub fn every_second(callback: impl Fn() + 'static) {
    let interval = set_interval_with_handle(callback, Duration::from_secs(1)).ok();
    on_cleanup(move || {
        if let Some(interval) = interval {
            interval.clear();
        }
    });
}

/// Runs `callback` every second until the page closes.
pub fn every_second_for_ever(callback: impl Fn() + 'static) {
    set_interval(callback, Duration::from_secs(1));
}

/// Runs `callback` once the next frame is painted; at once after this task where the page is hidden
/// and paints none.
pub fn after_frame(callback: impl FnOnce() + 'static) {
    let later = move || set_timeout(callback, Duration::ZERO);
    if document().hidden() {
        later();
    } else {
        request_animation_frame(later);
    }
}

/// Waits for the next task: the browser may draw or answer in between. A hidden page does not wait,
/// because its timers are slow.
pub async fn next_task() {
    if document().hidden() {
        return;
    }
    let promise = Promise::new(&mut |resolve, _| {
        set_timeout(
            move || {
                // A function of the browser, which cannot fail.
                let _done = resolve.call0(&JsValue::UNDEFINED);
            },
            Duration::ZERO,
        );
    });
    // It is never refused.
    let _done = JsFuture::from(promise).await;
}

/// A timer that starts anew with each request: one for each use, so that no use cancels another.
#[derive(Clone, Copy, Default)]
pub struct Debounce {
    timer: StoredValue<Option<TimeoutHandle>>,
}

impl Debounce {
    /// Runs `callback` so long after the last request.
    pub fn run(self, rest: Duration, callback: impl FnOnce() + 'static) {
        let timer = set_timeout_with_handle(callback, rest).ok();
        let earlier = self
            .timer
            .try_update_value(|held| mem::replace(held, timer));
        if let Some(earlier) = earlier.flatten() {
            earlier.clear();
        }
    }
}

/// Runs `callback` each time the page is about to be hidden or closed.
pub fn on_leaving(callback: impl Fn() + Clone + 'static) {
    for event in ["pagehide", "visibilitychange"] {
        let callback = callback.clone();
        mem::forget(window_event_listener_untyped(event, move |_| callback()));
    }
}
