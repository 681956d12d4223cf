//! The three figures of the place: dough, paste, starch.

use crate::text::tr;
use leptos::prelude::*;

use super::HeatContext;
use super::paste_figure::{PasteFigure, comes_to, starch_cooked, warmth};
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};

/// The three figures that the place is about.
#[component]
pub fn HeatKeys() -> impl IntoView {
    view! {
        <DoughFigure />
        <PasteFigure label=tr!("Paste") select=comes_to />
        <PasteFigure label=tr!("Starch cooked") select=starch_cooked />
    }
}

/// The temperature of the dough off the mixer.
#[component]
pub fn DoughFigure() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let Some(now) = context.read_mixing(|mixing| mixing.dough.temperature) else {
            return Shown::plain(tr!("none").to_owned());
        };
        let before = context.before.with(|before| before.as_ref()?.dough);
        warmth(now, before, options)
    });
    let working = move |()| {
        untrack(|| {
            context
                .read_mixing(|mixing| mixing.dough.working())
                .unwrap_or_default()
        })
    };
    view! { <Figure label=tr!("Dough comes off at") shown working=Callback::new(working) /> }
}
