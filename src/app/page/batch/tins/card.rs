//! The tins of the batch: which, how full, how high, and the plan from above.

use leptos::prelude::*;

use super::fields::TinBoxes;
use super::plan::TinDrawing;
use super::saved::SavedTins;
use crate::app::browser::live_region::announce;
use crate::app::page::BatchContext;
use crate::app::part::{AdviceCard, Button, Figure, PickOne, Shown};
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::engine::batch::BatchTarget;
use crate::engine::tin::TinKind;
use crate::engine::working::WorkingLine;
use crate::results::batch::tins;
use crate::sheet::TinUse;
use crate::text::{self, chart::TinPlan, name, tins::TinView, tr};

/// The tins of the batch.
#[component]
pub fn TinCard() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let view = memo(move || {
        let options = state.options.get();
        let tins = state.with(|sheet| context.read_scaled(|scaled| tins::of(sheet, scaled)));
        tins.flatten().map(|tins| text::tins::view(&tins, options))
    });
    let kind = memo(move || state.with(|sheet| sheet.batch.tin.map(|used| used.tins.tin.kind())));
    let kinds = memo(move || {
        let mut all = vec![(None, tr!("No tin").to_owned())];
        all.extend(TinKind::ALL.map(|kind| (Some(kind), name::tin_kind(kind).to_owned())));
        all
    });
    let choose = move |kind: Option<TinKind>| {
        state.edit(|sheet| sheet.batch.tin = kind.map(|kind| TinUse::of(kind.tin())));
    };
    let there = memo(move || view.with(Option::is_some));
    view! {
        <section class="card" aria-label=tr!("Tin")>
            <header>
                <h2>{tr!("Tin")}</h2>
                <span class="quiet">{tr!("inside measures")}</span>
            </header>
            <div class="body">
                <div class="boxes">
                    <PickOne id="tin-kind" label=tr!("Baked in") choices=kinds selected=kind on_select=Callback::new(choose) />
                </div>
                <Show when=move || there.get()>
                    <TinBoxes />
                    <TinFigures view />
                </Show>
                <SavedTins />
            </div>
        </section>
    }
}

type Select = fn(&TinView) -> String;

/// What follows from the tin.
#[component]
fn TinFigures(
    /// Its content.
    view: Memo<Option<TinView>>,
) -> impl IntoView {
    let state = use_app_state();
    let text = move |select: Select| {
        memo(move || view.with(|view| view.as_ref().map(select).unwrap_or_default()))
    };
    let figure = move |select: Select| {
        let text = text(select);
        memo(move || Shown {
            value: text.get(),
            was: None,
        })
    };
    let working = move |select: fn(&TinView) -> &Vec<WorkingLine>| {
        Callback::new(move |()| {
            view.with_untracked(|view| view.as_ref().map(select).cloned().unwrap_or_default())
        })
    };
    let height_working = working(|view| &view.height_working);
    let working = working(|view| &view.working);
    let advice = memo(move || view.with(|view| view.as_ref()?.advice.clone()));
    let plan = memo(move || view.with(|view| view.as_ref().map(|view| view.plan.clone())));
    let height = text(|view| view.height.clone());
    let uneven = text(|view| view.uneven.clone().unwrap_or_default());
    let fill = move |()| {
        let dough = view.with_untracked(|view| view.as_ref()?.dough);
        if let Some(dough) = dough {
            state.edit(|sheet| sheet.batch.wanted = BatchTarget::Dough(dough));
            announce(tr!("The batch is now as large as the tins want it."));
        }
    };
    view! {
        <div class="figures">
            <Figure label=tr!("Room in one tin") shown=figure(|view| view.room.clone()) working />
            <Figure label=tr!("Dough that suits the tins") shown=figure(|view| view.wanted.clone()) working />
            <Figure label=tr!("This batch has") shown=figure(|view| view.found.clone()) working />
        </div>
        <p class="quiet follows">{figure(|view| view.usual.clone()).get_untracked().value}</p>
        <AdviceCard title=tr!("The tin and the dough") advice />
        <Plan plan />
        <p class="follows">{move || height.get()}</p>
        <p class="follows">{move || uneven.get()}</p>
        <div class="buttons">
            <Button label=tr!("Make the batch for these tins") on_tap=fill />
            <Opens label=tr!("How the height came about") title=tr!("Height of the dough") value=height working=height_working />
        </div>
    }
}

/// The plan from above, or why there is none.
#[component]
fn Plan(
    /// The plan.
    plan: Memo<Option<Result<TinPlan, String>>>,
) -> impl IntoView {
    move || match plan.get() {
        Some(Ok(plan)) => view! { <TinDrawing plan /> }.into_any(),
        Some(Err(says)) => view! { <p class="quiet">{says}</p> }.into_any(),
        None => ().into_any(),
    }
}

/// A button that opens a working.
#[component]
fn Opens(
    /// Its label.
    label: &'static str,
    /// The title of the working.
    title: &'static str,
    /// What it led to.
    value: Memo<String>,
    /// The steps.
    working: Callback<(), Vec<WorkingLine>>,
) -> impl IntoView {
    let state = use_app_state();
    let open = move |()| {
        state.open(DialogKind::Working {
            title: title.to_owned(),
            value: value.get_untracked(),
            lines: working.run(()),
        });
    };
    view! { <Button label class="bare" on_tap=open /> }
}
