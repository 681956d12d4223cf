//! The tins of the batch: which, how full, how high, and the plan from above.

use leptos::prelude::*;

use super::fields::TinBoxes;
use super::plan::TinDrawing;
use super::saved::SavedTins;
use crate::app::page::BatchContext;
use crate::app::part::{AdviceCard, AnswerRow, Button, Figure, PickOne, Shown, Verdict};
use crate::app::state::{AppState, DialogKind, memo, use_app_state};
use crate::engine::tin::TinKind;
use crate::engine::working::WorkingLine;
use crate::results::batch::tins::{self, TinResults};
use crate::sheet::TinUse;
use crate::text::{self, batch_answer, chart::TinPlan, name, tins::TinView, tr};

/// The tins of the batch.
#[component]
pub fn TinCard() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let found = memo(move || {
        let options = state.options.get();
        let tins = state.with(|sheet| context.read_scaled(|scaled| tins::of(sheet, scaled)));
        let tins = tins.flatten();
        let suits = tins.as_ref().and_then(TinResults::suits);
        (batch_answer::tin(tins.as_ref(), options), suits)
    });
    let answer = Signal::derive(move || found.with(|found| found.0.clone()));
    let verdict = Signal::derive(move || match found.with(|found| found.1) {
        Some(true) => Verdict::Good,
        Some(false) => Verdict::Wrong,
        None => Verdict::Plain,
    });
    view! {
        <AnswerRow title=tr!("Tin") answer verdict>
            <TinBody />
        </AnswerRow>
    }
}

/// The tin, its measures, and what follows.
#[component]
pub fn TinBody() -> impl IntoView {
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
    let choose = move |kind: Option<TinKind>| choose(state, kind);
    let there = memo(move || view.with(Option::is_some));
    view! {
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
    }
}

/// The last tin of each kind, as long as the page is open.
#[derive(Clone, Copy)]
struct PreviousTins(StoredValue<Vec<TinUse>>);

/// Chooses a kind of tin: the last one of that kind, else the usual one.
fn choose(state: AppState, kind: Option<TinKind>) {
    let previous = state.page_singleton(|_| PreviousTins(StoredValue::new(Vec::new())));
    let now = untrack(|| state.with(|sheet| sheet.batch.tin));
    let of_kind = |used: &TinUse| Some(used.tins.tin.kind()) == kind;
    let found = previous
        .0
        .with_value(|all| all.iter().copied().find(of_kind));
    if let Some(now) = now {
        previous.0.update_value(|all| {
            all.retain(|used| used.tins.tin.kind() != now.tins.tin.kind());
            all.push(now);
        });
    }
    state.edit(|sheet| {
        sheet.batch.tin = kind.map(|kind| found.unwrap_or_else(|| TinUse::of(kind.tin())));
    });
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
    let ball_working = working(|view| &view.ball_working);
    let working = working(|view| &view.working);
    let advice = memo(move || view.with(|view| view.as_ref()?.advice.clone()));
    let plan = memo(move || view.with(|view| view.as_ref().map(|view| view.plan.clone())));
    let has_ball =
        memo(move || view.with(|view| view.as_ref().is_some_and(|view| view.ball.is_some())));
    let ball = figure(|view| view.ball.clone().unwrap_or_default());
    let height = text(|view| view.height.clone());
    let uneven = text(|view| view.uneven.clone().unwrap_or_default());
    let fill = move |()| {
        let dough = view.with_untracked(|view| view.as_ref()?.dough);
        if let Some(dough) = dough {
            BatchContext::fill_tins(state, dough);
        }
    };
    view! {
        <div class="figures">
            <Figure label=tr!("Volume of one tin") shown=figure(|view| view.room.clone()) working />
            <Figure label=tr!("Dough that suits the tins") shown=figure(|view| view.wanted.clone()) working />
            <Figure label=tr!("This batch has") shown=figure(|view| view.found.clone()) working />
        </div>
        <p class="quiet follows">{figure(|view| view.usual.clone()).get_untracked().value}</p>
        <AdviceCard title=tr!("The tin and the dough") advice />
        <Plan plan />
        <Show when=move || has_ball.get()>
            <div class="figures">
                <Figure label=tr!("Across one ball") shown=ball working=ball_working />
            </div>
        </Show>
        <p class="follows">{move || height.get()}</p>
        <p class="follows">{move || uneven.get()}</p>
        <div class="buttons">
            <Button label=tr!("Make the batch for these tins") on_tap=fill />
            <Opens label=tr!("How the height is worked out") title=tr!("Height of the dough") value=height working=height_working />
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
