//! Clock box: a labelled box for a time of day, or for a date and a time.

use leptos::prelude::*;

/// A labelled box for a time. A text that is no time, or is rejected, is replaced by the current
/// time.
#[component]
pub fn ClockBox(
    /// Unique on the page.
    id: &'static str,
    /// What is asked for: "Asleep from".
    #[prop(into)]
    label: Signal<&'static str>,
    /// Whether the date is asked for too.
    #[prop(optional)]
    dated: bool,
    /// The current time, written for a box.
    #[prop(into)]
    figure: Signal<String>,
    /// Called with the typed text.
    #[prop(into)]
    store: Callback<String>,
) -> impl IntoView {
    let kind = if dated { "datetime-local" } else { "time" };
    view! {
        <div class="clock-box">
            <label for=id>{label}</label>
            <input
                id=id
                type=kind
                prop:value=figure
                on:change:target=move |event| {
                    store.run(event.target().value());
                    event.target().set_value(&figure.get_untracked());
                }
            />
        </div>
    }
}
