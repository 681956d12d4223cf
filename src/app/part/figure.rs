//! Figure: a number that opens its working on a tap.

use crate::text::tr;
use leptos::prelude::*;

use crate::app::state::{DialogKind, use_app_state};
use crate::engine::working::Line;

/// A figure as it is shown: written out, with what it was where a trial changes it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shown {
    /// The figure with its unit, or why there is none.
    pub value: String,
    /// What a trial changes: old value and difference.
    pub was: Option<String>,
}

impl Shown {
    /// A figure that no trial changes.
    pub const fn plain(value: String) -> Self {
        Self { value, was: None }
    }

    /// A figure beside the one before the trial, where that is there and reads otherwise.
    pub fn beside(value: String, before: Option<String>) -> Self {
        let was = before.filter(|before| *before != value);
        Self {
            was: was.map(|before| tr!("was {before}", before = before)),
            value,
        }
    }

    /// The same, with the difference between the two.
    pub fn changed(value: String, before: Option<(String, String)>) -> Self {
        let was = before.filter(|(before, _)| *before != value);
        Self {
            was: was.map(|(before, difference)| was_by(&before, &difference)),
            value,
        }
    }
}

/// What a figure was, and by how much it has changed.
pub fn was_by(old: &str, difference: &str) -> String {
    tr!(
        "{difference}, was {old}",
        difference = difference,
        old = old
    )
}

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
    working: Callback<(), Vec<Line>>,
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
