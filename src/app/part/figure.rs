//! Figure: a number one can tap to see how it came about.

use leptos::prelude::*;

use crate::app::state::{Opened, State};
use crate::engine::working::Line;

/// A figure as it is shown: written out, with what it was where a trial changes it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shown {
    /// The figure with its unit, or why there is none.
    pub value: String,
    /// What a trial changes: old value and difference.
    pub was: Option<String>,
}

/// A number one can tap to see how it came about.
#[component]
pub fn Figure(
    /// What it is: "true water".
    #[prop(into)]
    label: Signal<String>,
    /// The figure.
    #[prop(into)]
    shown: Signal<Shown>,
    /// How it came about, asked for when it is tapped.
    #[prop(into)]
    working: Callback<(), Vec<Line>>,
) -> impl IntoView {
    let state = State::here();
    let value = move || shown.with(|shown| shown.value.clone());
    let was = move || shown.with(|shown| shown.was.clone());
    let open = move |_| {
        state.open(Opened::Working {
            title: label.get_untracked(),
            value: value(),
            lines: working.run(()),
        });
    };
    view! {
        <button type="button" class="figure" on:click=open aria-haspopup="dialog">
            <span class="value">{value}</span>
            <span class="label">{label}</span>
            {move || was().map(|was| view! { <span class="was">{was}</span> })}
        </button>
    }
}
