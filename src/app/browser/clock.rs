//! The clock: today's date, this moment, and a while later.

use std::cell::Cell;
use std::time::Duration;

use js_sys::Date;
use leptos::prelude::*;

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

/// Calls `told` every second for as long as the part of the page that asks is shown.
pub fn every_second(told: impl Fn() + 'static) {
    let every = set_interval_with_handle(told, Duration::from_secs(1)).ok();
    on_cleanup(move || {
        if let Some(every) = every {
            every.clear();
        }
    });
}

/// Calls `told` every second for as long as the page is open.
pub fn every_second_for_ever(told: impl Fn() + 'static) {
    set_interval(told, Duration::from_secs(1));
}

thread_local! {
    static RESTING: Cell<Option<TimeoutHandle>> = const { Cell::new(None) };
}

/// Calls `done` a second after the last time this was asked for.
pub fn debounce(done: impl FnOnce() + 'static) {
    let handle = set_timeout_with_handle(done, Duration::from_secs(1)).ok();
    if let Some(earlier) = RESTING.replace(handle) {
        earlier.clear();
    }
}

/// Calls `done` each time the page is about to be hidden or closed.
pub fn on_leaving(done: impl Fn() + 'static) {
    std::mem::forget(window_event_listener_untyped("pagehide", move |_| done()));
}
