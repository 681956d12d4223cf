//! The bowl: the heat that each ingredient adds, the target, and the remedies.

use leptos::prelude::*;

use super::HeatContext;
use super::fields::{MIXING, MIXING_BOWL, STANDING, WANTED};
use super::key_figures::DoughFigure;
use super::remedy_buttons::take;
use super::standing_fold::StandingFold;
use super::temperatures::Temperatures;
use crate::app::part::{BowlBalance, Button, FieldBox};
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::heat::LiquidAnswer;
use crate::results::heat::DoughQuestion;
use crate::text::{
    chart::{balance_bars, bowl_balance},
    format,
    heat::{self, Morning},
    tr,
};

/// The bowl this morning.
#[component]
pub fn BowlCard() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let wanted = memo(move || {
        let options = state.options.get();
        context.settings.with(|settings| {
            tr!(
                "wanted {value}",
                value = format::temperature(settings.dough, options)
            )
        })
    });
    let bars = memo(move || {
        let options = state.options.get();
        let bars = context.read_mixing(|mixing| {
            context
                .scaled
                .with(|formula| balance_bars(&mixing.shares, formula, &mixing.load, options))
        });
        bars.unwrap_or_default()
    });
    let description = memo(move || {
        let options = state.options.get();
        let description = context.read_mixing(|mixing| {
            context
                .scaled
                .with(|formula| bowl_balance(&mixing.shares, formula, &mixing.load, options))
        });
        description.unwrap_or_default()
    });
    let sum = memo(move || {
        let options = state.options.get();
        let wanted = context.settings.with(|settings| settings.dough);
        context
            .read_mixing(|mixing| heat::balance_sum(&mixing.dough, wanted, options))
            .unwrap_or_default()
    });
    let trust = memo(move || {
        state.options.track();
        context
            .read_mixing(|mixing| heat::trust_dough(mixing.friction_is_learnt()))
            .unwrap_or_default()
    });
    let development = memo(move || {
        let options = state.options.get();
        context
            .read_mixing(|mixing| heat::development(&mixing.development, options))
            .unwrap_or_default()
    });
    view! {
        <section class="card" aria-label=tr!("In the bowl this morning")>
            <header>
                <h2>{tr!("In the bowl this morning")}</h2>
                <span class="quiet">{wanted}</span>
            </header>
            <div class="body">
                <div class="boxes">
                    <FieldBox field=WANTED />
                    <FieldBox field=MIXING />
                    <FieldBox field=STANDING />
                    <FieldBox field=MIXING_BOWL />
                </div>
                <BowlBalance bars description=description />
                <p class="follows">{sum}</p>
                <p class="quiet">{trust}</p>
                <p class="follows">{development}</p>
                <LiquidLine />
                <Ways />
            </div>
            <div class="figures">
                <DoughFigure />
            </div>
            <Temperatures />
            <StandingFold />
        </section>
    }
}

/// How warm the liquid should be, where one is in reach, with a button that makes it so.
#[component]
fn LiquidLine() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let at = memo(move || {
        context
            .read_mixing(|mixing| match &mixing.liquid {
                Ok(LiquidAnswer::At { liquid, .. }) => Some(*liquid),
                Ok(LiquidAnswer::OutOfReach(_)) | Err(_) => None,
            })
            .flatten()
    });
    let sentence = memo(move || {
        let options = state.options.get();
        let wanted = context.settings.with(|settings| settings.dough);
        context
            .read_mixing(|mixing| {
                let answer = mixing.liquid.as_ref().ok()?;
                let morning = Morning {
                    load: &mixing.load,
                    wanted,
                    remedies: None,
                    options,
                };
                Some(heat::liquid(answer, morning).sentence())
            })
            .flatten()
            .unwrap_or_default()
    });
    let label = memo(move || {
        let options = state.options.get();
        at.get()
            .map(|at| {
                tr!(
                    "Take it at {value}",
                    value = format::temperature(at, options)
                )
            })
            .unwrap_or_default()
    });
    let is_there = memo(move || at.get().is_some());
    view! {
        <Show when=move || is_there.get()>
            <p class="follows liquid">{sentence}</p>
            <div class="buttons">
                <Button label class="primary" on_tap=move |()| take(state, context, at.get_untracked(), None) />
            </div>
        </Show>
    }
}

/// The remedies with the liquid as it is: computed after the frame.
#[component]
fn Ways() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let question = memo(move || {
        let wanted = context.settings.with(|settings| settings.dough);
        context.read_mixing(|mixing| {
            state
                .kitchen
                .with(|kitchen| DoughQuestion::as_it_is(&mixing.load, wanted, kitchen))
        })
    });
    let found = after_frame(question, DoughQuestion::remedies);
    let remedies = memo(move || {
        let options = state.options.get();
        let standing = context
            .read_mixing(|mixing| heat::standing_names(&mixing.load))
            .flatten()
            .unwrap_or_default();
        found.with(|found| {
            let remedies = found.iter().flatten();
            remedies
                .map(|remedy| heat::remedy(remedy, &standing, options))
                .collect::<Vec<_>>()
        })
    });
    let is_there = memo(move || remedies.with(|remedies| !remedies.is_empty()));
    view! {
        <Show when=move || is_there.get()>
            <h3>{tr!("What brings it there, the simplest first")}</h3>
            <ul class="ways-list follows">
                {move || remedies.get().into_iter().map(|remedy| view! { <li>{remedy}</li> }).collect_view()}
            </ul>
        </Show>
    }
}
