//! Advice first: targets out of reach, and the remedies.

use leptos::prelude::*;

use super::HeatContext;
use super::remedy_buttons::RemedyButtons;
use crate::app::part::AdviceCard;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::heat::{CookedPaste, LiquidAnswer};
use crate::results::heat::{DoughQuestion, MixingResult};
use crate::text::{
    Advice, ErrorText,
    heat::{self, Morning},
    tr,
};

/// The targets out of reach, where there are any.
#[component]
pub fn HeatAdvice() -> impl IntoView {
    view! {
        <Unreachable />
        <ColdPaste />
        <NoBowl />
    }
}

/// No liquid reaches what is wanted.
#[component]
fn Unreachable() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let wanted = move || context.settings.with(|settings| settings.dough);
    let question = memo(move || {
        let of = |mixing: &MixingResult| {
            let answer = mixing.liquid.as_ref().ok()?;
            state
                .kitchen
                .with(|kitchen| DoughQuestion::at_best(&mixing.load, answer, wanted(), kitchen))
        };
        context.read_mixing(of).flatten()
    });
    let remedies = after_frame(question, DoughQuestion::remedies);
    let advice = memo(move || {
        let options = state.options.get();
        let wanted = wanted();
        context
            .read_mixing(|mixing| match &mixing.liquid {
                Ok(answer @ LiquidAnswer::OutOfReach(_)) => remedies.with(|remedies| {
                    let morning = Morning {
                        load: &mixing.load,
                        wanted,
                        remedies: remedies.as_deref(),
                        options,
                    };
                    Some(heat::liquid(answer, morning))
                }),
                Ok(LiquidAnswer::At { .. }) | Err(_) => None,
            })
            .flatten()
    });
    let working = move |()| {
        untrack(|| {
            let lines = context.read_mixing(|mixing| match &mixing.liquid {
                Ok(LiquidAnswer::OutOfReach(out)) => out.dough.working(),
                Ok(LiquidAnswer::At { .. }) | Err(_) => Vec::new(),
            });
            lines.unwrap_or_default()
        })
    };
    let is_there = memo(move || advice.with(Option::is_some));
    view! {
        <AdviceCard title=tr!("The dough this morning") advice working=Callback::new(working) />
        <Show when=move || is_there.get()>
            <RemedyButtons remedies />
        </Show>
    }
}

/// The paste falls short.
#[component]
fn ColdPaste() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let advice = memo(move || {
        let options = state.options.get();
        short(context, |cooked| heat::paste(cooked, options))
    });
    let working = move |()| untrack(|| short(context, CookedPaste::working).unwrap_or_default());
    view! { <AdviceCard title=tr!("The paste") advice working=Callback::new(working) /> }
}

/// Something of the first paste that falls short.
fn short<T>(context: HeatContext, select: impl FnOnce(&CookedPaste) -> T) -> Option<T> {
    context
        .results
        .with(|results| results.short_paste().map(select))
}

/// The error of the bowl.
#[component]
fn NoBowl() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let advice = memo(move || {
        let options = state.options.get();
        context.results.with(|results| {
            let error = results.mixing.as_ref().err()?;
            Some(Advice {
                means: tr!("No dough temperature can be worked out.").into(),
                to_do: error.sentence(options).into(),
                source: tr!("by definition").into(),
            })
        })
    });
    view! { <AdviceCard title=tr!("The dough") advice /> }
}
