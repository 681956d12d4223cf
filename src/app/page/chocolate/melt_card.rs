//! Will it melt? Where chocolate and hot liquid settle, what stays in lumps, and what melts them.

use leptos::prelude::*;

use super::ChocolateAnswers;
use super::melt_fields::{BOWL, CHOCOLATE, LIQUID, PIECES};
use crate::app::page::BatchAnswers;
use crate::app::part::{AdviceCard, FieldBox, Figure, KitchenLink, MeltCurve, Shown};
use crate::app::state::{State, after_frame, memo};
use crate::engine::chocolate::{Melted, Melting, melt, melt_remedies};
use crate::engine::heat::HeatError;
use crate::engine::kitchen::melting;
use crate::text::{
    FormatOptions, Trouble, heat,
    chart::{MeltDrawing, melt_curve},
    tr, format,
};

/// Will it melt?
#[component]
pub fn MeltCard() -> impl IntoView {
    let state = State::here();
    let answers = ChocolateAnswers::here();
    let batch = BatchAnswers::here();
    let asked: Memo<Option<Result<Melting, HeatError>>> = memo(move || {
        let wishes = state.with(|sheet| sheet.heat.melt);
        let part = answers.topping.get()?;
        batch.made.with(|formula| {
            let own = formula.parts.get(part)?;
            Some(state.kitchen.with(|kitchen| melting(own, kitchen, &wishes)))
        })
    });
    let good = memo(move || asked.get().and_then(Result::ok));
    let settled: Memo<Option<Result<Melted, HeatError>>> = memo(move || {
        asked
            .get()
            .map(|asked| asked.and_then(|asked| melt(&asked)))
    });
    let trouble = memo(move || {
        let manner = state.manner.get();
        settled.with(|settled| match settled {
            Some(Err(error)) => Some(error.sentence(manner)),
            Some(Ok(_)) | None => None,
        })
    });
    let melted = memo(move || settled.get().and_then(Result::ok));
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
                <MeltFigure melted label=tr!("They settle at") look=|melted, manner| format::temperature(melted.temperature, manner) />
                <MeltFigure melted label=tr!("Fat that stays solid") look=|melted, manner| format::share(melted.unmelted, manner) />
            </div>
        </section>
    }
}

#[component]
fn Curve(melted: Memo<Option<Melted>>) -> impl IntoView {
    let state = State::here();
    let drawing = memo(move || {
        let manner = state.manner.get();
        melted.with(|melted| {
            melted
                .as_ref()
                .map(|melted| MeltDrawing::of(melted, manner))
        })
    });
    let told = memo(move || {
        let manner = state.manner.get();
        melted
            .with(|melted| melted.as_ref().map(|melted| melt_curve(melted, manner)))
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
    let state = State::here();
    let remedies = after_frame(good, |asked: &Melting| {
        let melted = melt(asked).ok()?;
        melt_remedies(asked, &melted).ok()
    });
    let advice = memo(move || {
        let manner = state.manner.get();
        melted.with(|melted| {
            let melted = melted.as_ref()?;
            remedies.with(|remedies| {
                Some(heat::melted(
                    melted,
                    remedies.as_deref().unwrap_or_default(),
                    manner,
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
    let state = State::here();
    let advice = memo(move || Some(heat::bath_caution(state.manner.get())));
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
    let state = State::here();
    let shown = memo(move || {
        let manner = state.manner.get();
        let value = melted.with(|melted| melted.as_ref().map(|melted| look(melted, manner)));
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
