//! Melting: gently, as the steps have it; and what hot liquid poured on cold chocolate leaves instead:
//! its final temperature, the lumps left, and their remedies.

use leptos::prelude::*;

use super::ChocolateContext;
use super::melt_fields::{BOWL, CHOCOLATE, LIQUID, PIECES};
use crate::app::part::{
    AdviceCard, AnswerRow, FieldBox, Figure, KitchenLink, MeltCurve, SafetyLine, Shown,
};
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::chocolate::Melted;
use crate::engine::working::WorkingLine;
use crate::results::chocolate::MeltResults;
use crate::text::{
    ErrorText, FormatOptions,
    caution::Hazard,
    chart::{MeltDrawing, melt_curve},
    chocolate_answer, format, heat, tr,
};

/// Will it melt?
#[component]
pub fn MeltCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context
            .read_melt(|melt| chocolate_answer::melting(&melt.melted, options))
            .unwrap_or_else(|| tr!("not known").to_owned())
    });
    view! {
        <AnswerRow title=tr!("Melting") answer>
            <Content />
        </AnswerRow>
    }
}

/// Melting as the steps have it, then what pouring leaves, with its temperatures and its curve.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let error = memo(move || {
        let options = state.options.get();
        context.now.with(|now| match &now.melt {
            Some(Err(error)) => Some(error.sentence(options)),
            Some(Ok(_)) | None => None,
        })
    });
    let melt = memo(move || context.read_melt(MeltResults::clone));
    view! {
            <div class="body">
                <p>{heat::melt_gently()}</p>
                <SafetyLine step=Hazard::HotChocolate />
                <Scorch />
                <h3>{tr!("The other way: hot liquid poured on the chocolate")}</h3>
                <WhatMelts melt />
                <div class="boxes">
                    <FieldBox field=LIQUID />
                    <FieldBox field=CHOCOLATE />
                    <FieldBox field=BOWL />
                    <FieldBox field=PIECES />
                </div>
                <KitchenLink />
                {move || error.get().map(|wording| view! { <p class="error" role="status">{wording}</p> })}
                <Curve melt />
            </div>
            <div class="figures">
                <MeltFigure melt label=tr!("Mix temperature") select=|melted, options| format::temperature(melted.temperature, options) />
                <MeltFigure melt label=tr!("Fat that stays solid") select=|melted, options| format::share(melted.unmelted, options) />
            </div>
    }
}

#[component]
fn Curve(
    /// Chocolate and liquid, settled.
    melt: Memo<Option<MeltResults>>,
) -> impl IntoView {
    let state = use_app_state();
    let drawing = memo(move || {
        let options = state.options.get();
        let of = |found: &MeltResults| MeltDrawing::of(&found.melted, options);
        melt.with(|melt| melt.as_ref().map(of))
    });
    let description = memo(move || {
        let options = state.options.get();
        let of = |found: &MeltResults| melt_curve(&found.melted, options);
        melt.with(|melt| melt.as_ref().map(of)).unwrap_or_default()
    });
    move || {
        drawing
            .get()
            .map(|drawing| view! { <MeltCurve drawing description=description /> })
    }
}

/// What melts the lumps: computed after the frame.
#[component]
fn WhatMelts(
    /// Chocolate and liquid, settled.
    melt: Memo<Option<MeltResults>>,
) -> impl IntoView {
    let state = use_app_state();
    let remedies = after_frame(melt, MeltResults::remedies);
    let advice = memo(move || {
        let options = state.options.get();
        melt.with(|melt| {
            let melted = &melt.as_ref()?.melted;
            remedies.with(|remedies| {
                Some(heat::melted(
                    melted,
                    remedies.as_deref().unwrap_or_default(),
                    options,
                ))
            })
        })
    });
    let working = move |()| working(melt);
    view! { <AdviceCard title=tr!("If you pour it on") advice working=Callback::new(working) /> }
}

/// The working of the heat balance.
fn working(melt: Memo<Option<MeltResults>>) -> Vec<WorkingLine> {
    let of = |found: &MeltResults| found.melted.working();
    melt.with_untracked(|melt| melt.as_ref().map(of).unwrap_or_default())
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
    melt: Memo<Option<MeltResults>>,
    /// Its name.
    label: &'static str,
    /// The figure, written out.
    select: fn(&Melted, FormatOptions) -> String,
) -> impl IntoView {
    let state = use_app_state();
    let shown = memo(move || {
        let options = state.options.get();
        let value = melt.with(|melt| Some(select(&melt.as_ref()?.melted, options)));
        Shown::plain(value.unwrap_or_else(|| tr!("none").to_owned()))
    });
    let working = move |()| working(melt);
    view! { <Figure label shown working=Callback::new(working) /> }
}
