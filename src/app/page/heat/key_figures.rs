//! The three figures of the place: dough, paste, starch.

use leptos::prelude::*;

use super::HeatContext;
use super::paste_figure::{PasteFigure, comes_to, starch_cooked};
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::results::heat::MixingResult;
use crate::text::{heat, tr};

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
        let dough = context.results.with(|results| results.dough);
        let shown = dough.map(|dough| {
            let now = dough.temperature;
            let before = context.before.with(|before| before.as_ref()?.dough);
            let wording = |before| heat::dough_before_and_change(before, now, options);
            let value = heat::off_mixer(&dough, options);
            Shown::changed(value, before.map(wording))
        });
        shown.unwrap_or_else(|| Shown::plain(tr!("none").to_owned()))
    });
    let working = move |()| {
        untrack(|| {
            context
                .read_mixing(MixingResult::working)
                .unwrap_or_default()
        })
    };
    view! { <Figure label=tr!("Dough temperature") shown working=Callback::new(working) /> }
}
