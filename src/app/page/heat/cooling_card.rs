//! Cooling what is hot: the curve with the rules' limits, passes or not, and what makes it pass.

use leptos::prelude::*;

use super::HeatContext;
use super::cooling_boxes::{CoolingBoxes, WhatCools};
use crate::app::part::{AdviceCard, AnswerRow, CoolingCurve, SafetyLine, Verdict};
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::heat::CooledRange;
use crate::results::heat::{CoolingPlan, CoolingResult};
use crate::text::{
    ErrorText,
    caution::Hazard,
    chart::{self, CoolingDrawing},
    heat, tr,
};

/// Cooling a paste or a cooked filling; nothing where there is neither.
#[component]
pub fn CoolingCard() -> impl IntoView {
    let context = HeatContext::from_context();
    let any = memo(move || context.read_cooling(|_| ()).is_some());
    view! {
        <Show when=move || any.get()>
            <Cools />
        </Show>
    }
}

#[component]
fn Cools() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context
            .read_cooling(|cooling| heat::cooling_answer(cooling, options))
            .unwrap_or_default()
    });
    let verdict = memo(move || {
        let passes = context.read_cooling(|cooling| {
            let cooled = cooling.cooled.as_ref();
            (
                cooling.plan.is_none(),
                cooled.is_some_and(|cooled| cooled.slow.passes),
            )
        });
        match passes {
            Some((_, true)) => Verdict::Good,
            Some((false, false)) => Verdict::Wrong,
            Some((true, false)) | None => Verdict::Plain,
        }
    });
    view! {
        <AnswerRow title=tr!("Cooling") answer verdict>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let good = memo(move || {
        context
            .read_cooling(|cooling| cooling.good_plan().copied())
            .flatten()
    });
    let cooled = memo(move || {
        context
            .read_cooling(|cooling| cooling.cooled.clone())
            .flatten()
    });
    let error = memo(move || {
        let options = state.options.get();
        context
            .read_cooling(|cooling| cooling.error().map(|error| error.sentence(options)))
            .flatten()
    });
    let cold = memo(move || {
        context
            .read_cooling(|cooling| cooling.plan.is_none())
            .unwrap_or_default()
    });
    let rules = memo(move || state.kitchen.with(|kitchen| kitchen.rules));
    let verdict = memo(move || {
        let options = state.options.get();
        cooled.with(|cooled| {
            cooled
                .as_ref()
                .map(|cooled| heat::verdict(cooled, rules.get(), options))
        })
    });
    let working = move |()| {
        let lines = untrack(|| context.read_cooling(CoolingResult::working));
        lines.unwrap_or_default()
    };
    view! {
        <div class="body">
            <WhatCools />
            {move || error.get().map(|wording| view! { <p class="error" role="status">{wording}</p> })}
            <Show when=move || cold.get()>
                <p class="quiet">{tr!("If it is cooked, say how hot it comes off the heat.")}</p>
            </Show>
            <Way good />
            <SafetyLine step=Hazard::KeepingCold />
            <Curve good cooled />
            <AdviceCard title=tr!("Fast enough?") advice=verdict working=Callback::new(working) />
            <LimitByLimit cooled />
            <p class="quiet">{move || heat::trust_cooling(state.options.get())}</p>
            <WhatHelps good />
            <CoolingBoxes />
        </div>
    }
}

/// The way it is cooled, with the depth it then has.
#[component]
fn Way(good: Memo<Option<CoolingPlan>>) -> impl IntoView {
    let state = use_app_state();
    let way = memo(move || {
        let options = state.options.get();
        let plan = good.get()?;
        let deep = plan.deep().ok()?;
        Some(heat::cooling_way(&plan.way, deep, options))
    });
    view! { <p class="follows"><strong>{way}</strong></p> }
}

#[component]
fn Curve(good: Memo<Option<CoolingPlan>>, cooled: Memo<Option<CooledRange>>) -> impl IntoView {
    let state = use_app_state();
    let drawing = memo(move || {
        let options = state.options.get();
        let stays = good.get()?.stays();
        cooled.with(|cooled| {
            cooled
                .as_ref()
                .map(|cooled| CoolingDrawing::of(&cooled.slow, &stays, options))
        })
    });
    let description = memo(move || {
        let options = state.options.get();
        let stays = good.get().map(|plan| plan.stays()).unwrap_or_default();
        cooled
            .with(|cooled| {
                cooled
                    .as_ref()
                    .map(|cooled| chart::cooling_curve(&cooled.slow, &stays, options))
            })
            .unwrap_or_default()
    });
    move || {
        drawing
            .get()
            .map(|drawing| view! { <CoolingCurve drawing description=description /> })
    }
}

/// Each limit of the rules, passed or not.
#[component]
fn LimitByLimit(cooled: Memo<Option<CooledRange>>) -> impl IntoView {
    let state = use_app_state();
    let limits = memo(move || {
        let options = state.options.get();
        cooled.with(|cooled| {
            let stages = cooled.iter().flat_map(|cooled| &cooled.slow.stages);
            stages
                .map(|stage| heat::stage_verdict(stage, options))
                .collect::<Vec<_>>()
        })
    });
    view! {
        <ul class="ways-list follows">
            {move || limits.get().into_iter().map(|limit| view! { <li>{limit}</li> }).collect_view()}
        </ul>
    }
}

/// When it must be in the fridge, and what makes it pass: computed after the frame.
#[component]
fn WhatHelps(good: Memo<Option<CoolingPlan>>) -> impl IntoView {
    let state = use_app_state();
    let advice = after_frame(good, |plan: &CoolingPlan| plan.advise().ok());
    let bench = memo(move || {
        let options = state.options.get();
        let way = good.get().map(|plan| plan.way);
        advice
            .with(|advice| {
                let advice = advice.as_ref()?;
                Some(heat::bench_at_most(advice, &way?, options))
            })
            .unwrap_or_default()
    });
    let remedies = memo(move || {
        let options = state.options.get();
        advice.with(|advice| {
            let remedies = advice.iter().flat_map(|advice| &advice.remedies);
            remedies
                .map(|remedy| heat::cooling_remedy(remedy, options))
                .collect::<Vec<_>>()
        })
    });
    view! {
        <div class="follows helps">
            <p><strong>{bench}</strong></p>
            <ul class="ways-list">
                {move || remedies.get().into_iter().map(|remedy| view! { <li>{remedy}</li> }).collect_view()}
            </ul>
        </div>
    }
}
