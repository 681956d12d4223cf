//! Figure: a number that opens its working on a tap.

use leptos::prelude::*;

use crate::app::state::{DialogKind, use_app_state};
use crate::engine::working::WorkingLine;
use crate::text::Shown;

/// A number that opens its working on a tap.
#[component]
pub fn Figure(
    /// What it is: "true water".
    #[prop(into)]
    label: Signal<String>,
    /// The figure.
    #[prop(into)]
    shown: Signal<Shown>,
    /// Its working, computed on a tap.
    #[prop(into)]
    working: Callback<(), Vec<WorkingLine>>,
) -> impl IntoView {
    let state = use_app_state();
    let open = move |value| {
        state.open(DialogKind::Working {
            title: label.get_untracked(),
            value,
            lines: working.run(()),
        });
    };
    view! { <FigureButton label shown open=Callback::new(open) /> }
}

/// A number one can tap.
#[component]
pub fn FigureButton(
    /// What it is.
    #[prop(into)]
    label: Signal<String>,
    /// The figure.
    #[prop(into)]
    shown: Signal<Shown>,
    /// Called with the figure as it is shown.
    open: Callback<String>,
) -> impl IntoView {
    let value = move || shown.with(|shown| shown.value.clone());
    let was = move || shown.with(|shown| shown.was.clone());
    let tapped = move |_| open.run(shown.with_untracked(|shown| shown.value.clone()));
    view! {
        <button type="button" class="figure" on:click=tapped aria-haspopup="dialog">
            <span class="value">{value}</span>
            <span class="label">{label}</span>
            {move || was().map(|was| view! { <span class="was">{was}</span> })}
        </button>
    }
}
