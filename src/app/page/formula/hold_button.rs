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
    // They outlast the view: it may be closed while the button is held.
    let running = ArcStoredValue::new(None::<IntervalHandle>);
    let has_run = ArcStoredValue::new(false);
    let stop = {
        let running = running.clone();
        move || {
            if let Some(handle) = running.try_update_value(Option::take).flatten() {
                handle.clear();
            }
        }
    };
    let start = {
        let (stop, has_run) = (stop.clone(), has_run.clone());
        move |event: leptos::ev::PointerEvent| {
            stop();
            // The sheet may grow and move the button from under the pointer. Refused where that is gone.
            let button = event_target::<web_sys::Element>(&event);
            let _refused = button.set_pointer_capture(event.pointer_id());
            has_run.set_value(false);
            let has_run = has_run.clone();
            let next = move || {
                has_run.set_value(true);
                // None once the view is closed.
                let _step = step.try_run(());
            };
            running.set_value(set_interval_with_handle(next, PACE).ok());
        }
    };
    let tapped = {
        let stop = stop.clone();
        move |_| {
            stop();
            // What was held has taken its steps.
            if !has_run.get_value() {
                step.run(());
            }
            has_run.set_value(false);
        }
    };
    let [up, cancelled, left] = [stop.clone(), stop.clone(), stop.clone()];
    on_cleanup(stop);
    view! {
        <button
            type="button"
            class="button hold"
            aria-label=name
            on:pointerdown=start
            on:pointerup=move |_| up()
            on:pointercancel=move |_| cancelled()
            on:pointerleave=move |_| left()
            on:click=tapped
        >
            {sign}
        </button>
    }
}
