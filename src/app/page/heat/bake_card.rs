//! The bake: its programme, its core, and its time scaled from a bake that is known.

use leptos::prelude::*;

use super::HeatContext;
use super::known_bake::KnownBakeBoxes;
use super::phases::Phases;
use crate::app::page::Day;
use crate::app::part::{AdviceCard, AnswerRow, Figure, SafetyLine, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::{BakeTime, LoafCooling, Programme};
use crate::engine::working::WorkingLine;
use crate::results::heat::Baking;
use crate::results::run::Run;
use crate::text::{ErrorText, FormatOptions, caution::Hazard, format, heat, tr};

/// The bake.
#[component]
pub fn BakeCard() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let day = Day::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        let minutes = day.run.with(Run::bake_time);
        read(context, |baking| match &baking.programme {
            Ok(programme) => heat::bake_answer(minutes, programme, &baking.core, options),
            Err(error) => error.sentence(options),
        })
        .unwrap_or_default()
    });
    view! {
        <AnswerRow title=tr!("The bake") answer>
            <Content />
        </AnswerRow>
    }
}

/// How long the bread cools until it is cut.
#[component]
pub fn CutRow() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        read(context, |baking| match &baking.cooling {
            Ok(cooling) => heat::cut_answer(cooling, options),
            Err(error) => error.sentence(options),
        })
        .unwrap_or_default()
    });
    view! {
        <AnswerRow title=tr!("Until it is cut") answer tucked=true>
            <div class="body"><Cut /></div>
        </AnswerRow>
    }
}

#[component]
fn Cut() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let cooling = memo(move || {
        let options = state.options.get();
        read(context, |baking| {
            let cooling = baking.cooling.as_ref().ok();
            cooling.map(|cooling| heat::loaf_cooling(cooling, options))
        })
        .flatten()
    });
    let working = move |()| {
        let lines = read(context, |baking| {
            let cooling = baking.cooling.as_ref();
            cooling.map(LoafCooling::working).unwrap_or_default()
        });
        untrack(|| lines.unwrap_or_default())
    };
    view! { <AdviceCard title=tr!("Cool enough to cut") advice=cooling working=Callback::new(working) /> }
}

#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let core = memo(move || {
        let options = state.options.get();
        read(context, |baking| {
            heat::core(&baking.core, baking.boils, options)
        })
        .unwrap_or_default()
    });
    let time = memo(move || {
        let options = state.options.get();
        read(context, |baking| {
            baking
                .time
                .as_ref()
                .ok()
                .map(|time| heat::bake_time(time, options))
        })
        .flatten()
    });
    let error = memo(move || {
        let options = state.options.get();
        read(context, |baking| {
            baking
                .time
                .as_ref()
                .err()
                .map(|error| error.sentence(options))
        })
        .flatten()
    });
    let working = move |()| {
        let lines = read(context, |baking| {
            baking
                .time
                .as_ref()
                .map(BakeTime::working)
                .unwrap_or_default()
        });
        untrack(|| lines.unwrap_or_default())
    };
    view! {
        <div class="body">
            <p class="follows"><strong>{core}</strong></p>
            <SafetyLine step=Hazard::Baking />
            <AdviceCard title=tr!("How long") advice=time working=Callback::new(working) />
            {move || error.get().map(|wording| view! { <p class="error" role="status">{wording}</p> })}
            <Phases />
            <KnownBakeBoxes />
        </div>
        <div class="figures">
            <BakeFigure label=tr!("One setting, conventional oven") select=|baking, options| {
                baking.programme.as_ref().map_or_else(|error| error.sentence(options), |programme| format::temperature(programme.mean_as_still, options))
            } working=|baking| baking.programme.as_ref().map(Programme::working).unwrap_or_default() />
            <BakeFigure label=tr!("Middle") select=|baking, options| format::temperature_range(baking.core.from, baking.core.to, options) working=Baking::core_working />
            <LossFigure />
        </div>
    }
}

fn read<T>(context: HeatContext, select: impl FnOnce(&Baking) -> T) -> Option<T> {
    context
        .results
        .with(|results| results.baking.as_ref().ok().map(select))
}

#[component]
fn BakeFigure(
    /// Its name.
    label: &'static str,
    /// The figure, written out.
    select: fn(&Baking, FormatOptions) -> String,
    /// Its working.
    working: fn(&Baking) -> Vec<WorkingLine>,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        Shown {
            value: read(context, |baking| select(baking, options))
                .unwrap_or_else(|| tr!("none").to_owned()),
            was: None,
        }
    });
    let worked = move |()| untrack(|| read(context, working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(worked) /> }
}

/// The oven loss of the dough, from the batch.
#[component]
fn LossFigure() -> impl IntoView {
    let state = use_app_state();
    let batch = crate::app::page::BatchContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        Shown {
            value: batch.read(|scaled| format::mass(scaled.lost_baking, options)),
            was: None,
        }
    });
    let working = move |()| batch.working_of(crate::engine::batch::BatchFigure::Baked);
    view! { <Figure label=tr!("Lost in the oven") shown working=Callback::new(working) /> }
}
