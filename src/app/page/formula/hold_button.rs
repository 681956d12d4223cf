//! Hold button: a button that repeats while it is held.

use std::time::Duration;

use leptos::leptos_dom::helpers::IntervalHandle;
use leptos::prelude::*;

/// The time between two steps of a button that is held; a tap is shorter.
const PACE: Duration = Duration::from_millis(250);

/// A button that takes a step on a tap and goes on while it is held.
#[component]
pub fn HoldButton(
    /// What is shown: "+".
    sign: &'static str,
    /// What it does: "half a point more".
    name: &'static str,
    /// Called for each step.
    step: Callback<()>,
) -> impl IntoView {
    let running = StoredValue::new(None::<IntervalHandle>);
    let has_run = StoredValue::new(false);
    let stop = move || {
        if let Some(handle) = running.try_update_value(Option::take).flatten() {
            handle.clear();
        }
    };
    let start = move |event: leptos::ev::PointerEvent| {
        stop();
        // The sheet may grow and move the button from under the pointer. Refused where that is gone.
        let button = event_target::<web_sys::Element>(&event);
        let _refused = button.set_pointer_capture(event.pointer_id());
        has_run.set_value(false);
        let next = move || {
            has_run.set_value(true);
            step.run(());
        };
        running.set_value(set_interval_with_handle(next, PACE).ok());
    };
    let tapped = move |_| {
        stop();
        // What was held has taken its steps.
        if !has_run.get_value() {
            step.run(());
        }
        has_run.set_value(false);
    };
    on_cleanup(stop);
    view! {
        <button
            type="button"
            class="button hold"
            aria-label=name
            on:pointerdown=start
            on:pointerup=move |_| stop()
            on:pointercancel=move |_| stop()
            on:pointerleave=move |_| stop()
            on:click=tapped
        >
            {sign}
        </button>
    }
}
