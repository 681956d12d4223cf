//! The handbook's factor method beside the balance of heat, for those who teach it.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::{Figure, PickOne, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::{FactorMethod, PrintedFactor};
use crate::text::{ErrorText, format, heat, name, tr};

/// The handbook's sum, and why it differs.
#[component]
pub fn FactorMethodBoxes() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let factor = memo(move || context.read_mixing(|mixing| mixing.factor.clone()));
    let shown = memo(move || {
        let options = state.options.get();
        let value = factor.with(|factor| match factor {
            Some(Ok(factor)) => format::temperature(factor.water, options),
            Some(Err(error)) => error.sentence(options),
            None => tr!("none").to_owned(),
        });
        Shown { value, was: None }
    });
    let differs = memo(move || {
        let options = state.options.get();
        context
            .read_mixing(|mixing| {
                mixing
                    .liquid
                    .as_ref()
                    .ok()
                    .map(|answer| heat::factor_differs(answer, options))
            })
            .flatten()
            .unwrap_or_default()
    });
    let choices = memo(move || {
        PrintedFactor::ALL
            .map(|printed| (printed, name::printed_factor(printed).to_owned()))
            .to_vec()
    });
    let printed = memo(move || state.kitchen.with(|kitchen| kitchen.mixer.printed));
    let choose = move |printed: PrintedFactor| {
        let mut kitchen = state.kitchen.get_untracked();
        kitchen.mixer.printed = printed;
        state.set_kitchen(kitchen);
    };
    let means = memo(move || heat::printed_factor(printed.get(), state.options.get()));
    let working = move |()| {
        factor.with_untracked(|factor| match factor {
            Some(Ok(factor)) => FactorMethod::working(factor),
            Some(Err(_)) | None => Vec::new(),
        })
    };
    view! {
        <div class="figures">
            <Figure label=tr!("Liquid by the textbook rule") shown working=Callback::new(working) />
        </div>
        <div class="body">
            <PickOne id="printed-factor" label=tr!("Friction factor printed for") choices selected=printed on_select=choose />
            <p class="follows">{means}</p>
            <p class="follows">{differs}</p>
        </div>
    }
}
