//! Will it melt? Where chocolate and hot liquid settle, what stays in lumps, and what melts them.

use leptos::prelude::*;

use super::ChocolateAnswers;
use super::melt_fields::{BOWL, CHOCOLATE, LIQUID, PIECES};
use crate::app::page::BatchAnswers;
use crate::app::part::{AdviceCard, FieldBox, Figure, KitchenLink, MeltCurve, Shown};
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::chocolate::{Melted, Melting, melt, melt_remedies};
use crate::engine::heat::HeatError;
use crate::results::heat::melting;
use crate::text::{
    FormatOptions, Trouble,
    chart::{MeltDrawing, melt_curve},
    format, heat, tr,
};

/// Will it melt?
#[component]
pub fn MeltCard() -> impl IntoView {
    let state = use_app_state();
    let answers = ChocolateAnswers::here();
    let batch = BatchAnswers::here();
    let asked: Memo<Option<Result<Melting, HeatError>>> = memo(move || {
        let settings = state.with(|sheet| sheet.heat.melt);
        let part = answers.topping.get()?;
        batch.made.with(|formula| {
            let own = formula.parts.get(part)?;
            Some(
                state
                    .kitchen
                    .with(|kitchen| melting(own, kitchen, &settings)),
            )
        })
    });
    let good = memo(move || asked.get().and_then(Result::ok));
    let input_resets: Memo<Option<Result<Melted, HeatError>>> = memo(move || {
        asked
            .get()
            .map(|asked| asked.and_then(|asked| melt(&asked)))
    });
    let trouble = memo(move || {
        let options = state.options.get();
        input_resets.with(|input_resets| match input_resets {
            Some(Err(error)) => Some(error.sentence(options)),
            Some(Ok(_)) | None => None,
        })
    });
    let melted = memo(move || input_resets.get().and_then(Result::ok));
    view! {
        <section class="card" data-part="topping" aria-label=tr!("Will it melt?")>
            <header>
                <h2>{tr!("Will it melt?")}</h2>
                <span class="quiet">{tr!("chocolate and hot liquid")}</span>
            </header>
            <div class="body">
                <div class="boxes">
                    <FieldBox field=LIQUID />
                    <FieldBox field=CHOCOLATE />
                    <FieldBox field=BOWL />
                    <FieldBox field=PIECES />
                </div>
                <KitchenLink />
                {move || trouble.get().map(|said| view! { <p class="trouble" role="status">{said}</p> })}
                <Curve melted />
                <WhatMelts good melted />
                <Scorch />
            </div>
            <div class="figures">
                <MeltFigure melted label=tr!("They settle at") look=|melted, options| format::temperature(melted.temperature, options) />
                <MeltFigure melted label=tr!("Fat that stays solid") look=|melted, options| format::share(melted.unmelted, options) />
            </div>
        </section>
    }
}

#[component]
fn Curve(melted: Memo<Option<Melted>>) -> impl IntoView {
    let state = use_app_state();
    let drawing = memo(move || {
        let options = state.options.get();
        melted.with(|melted| {
            melted
                .as_ref()
                .map(|melted| MeltDrawing::of(melted, options))
        })
    });
    let told = memo(move || {
        let options = state.options.get();
        melted
            .with(|melted| melted.as_ref().map(|melted| melt_curve(melted, options)))
            .unwrap_or_default()
    });
    move || {
        drawing
            .get()
            .map(|drawing| view! { <MeltCurve drawing told /> })
    }
}

/// What melts the lumps: looked for after the frame.
#[component]
fn WhatMelts(good: Memo<Option<Melting>>, melted: Memo<Option<Melted>>) -> impl IntoView {
    let state = use_app_state();
    let remedies = after_frame(good, |asked: &Melting| {
        let melted = melt(asked).ok()?;
        melt_remedies(asked, &melted).ok()
    });
    let advice = memo(move || {
        let options = state.options.get();
        melted.with(|melted| {
            let melted = melted.as_ref()?;
            remedies.with(|remedies| {
                Some(heat::melted(
                    melted,
                    remedies.as_deref().unwrap_or_default(),
                    options,
                ))
            })
        })
    });
    let working = move |()| {
        melted.with_untracked(|melted| melted.as_ref().map(Melted::working).unwrap_or_default())
    };
    view! { <AdviceCard title=tr!("Lumps") advice working=Callback::new(working) /> }
}

#[component]
fn Scorch() -> impl IntoView {
    let state = use_app_state();
    let advice = memo(move || Some(heat::bath_caution(state.options.get())));
    view! { <AdviceCard title=tr!("Scorching and steam") advice /> }
}

#[component]
fn MeltFigure(
    /// Chocolate and liquid, settled.
    melted: Memo<Option<Melted>>,
    /// What it is called.
    label: &'static str,
    /// The figure, written out.
    look: fn(&Melted, FormatOptions) -> String,
) -> impl IntoView {
    let state = use_app_state();
    let shown = memo(move || {
        let options = state.options.get();
        let value = melted.with(|melted| melted.as_ref().map(|melted| look(melted, options)));
        Shown {
            value: value.unwrap_or_else(|| tr!("none").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        melted.with_untracked(|melted| melted.as_ref().map(Melted::working).unwrap_or_default())
    };
    view! { <Figure label shown working=Callback::new(working) /> }
}
