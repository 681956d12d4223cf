//! The cards of a visit: how much, in what, what to weigh, what to do; and whether it works with no
//! signal.

use leptos::prelude::*;

use crate::app::browser::offline;
use crate::app::page::{BatchContext, TinCard, WantedCard};
use crate::app::part::{Button, weigh_row, weigh_table};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::text::share::{bench_card, in_cups, steps};
use crate::text::{notice, tr};

/// What a visitor sees first.
#[component]
pub fn VisitCards() -> impl IntoView {
    view! {
        <div class="newspaper visit">
            <HandedCard />
            <WantedCard />
            <TinCard />
            <WeighCard />
            <StepsCard />
        </div>
    }
}

/// What this is, and whether it works with no signal by now.
#[component]
fn HandedCard() -> impl IntoView {
    let state = use_app_state();
    let saved = RwSignal::new(None);
    offline::when_cached(saved);
    let offline = move || match saved.get() {
        Some(true) => notice::offline_ready(),
        Some(false) => notice::offline_never(),
        None => notice::offline_soon(),
    };
    view! {
        <section class="card" aria-label=tr!("Handed to you")>
            <header>
                <h2>{tr!("Handed to you")}</h2>
            </header>
            <div class="body">
                <p>{tr!("Say how many pieces you make, or which tin you have, and every weight follows. A tap on a figure shows how it came about.")}</p>
                <p role="status" class="follows"><b>{offline}</b></p>
                <Show when=move || !state.is_trial()>
                    <div class="buttons">
                        <Button label=tr!("Try something without changing it") on_tap=move |()| state.begin_trial() />
                    </div>
                </Show>
            </div>
        </section>
    }
}

/// What to weigh for the batch, and what must be named.
#[component]
fn WeighCard() -> impl IntoView {
    let state = use_app_state();
    let (context, workspace) = (BatchContext::from_context(), WorkspaceStore::from_context());
    let card = memo(move || {
        let (sheet, options) = (state.current(), state.options.get());
        context.results.with(|batch| {
            workspace
                .pantry
                .with(|pantry| bench_card(&sheet, batch, pantry, None, options))
        })
    });
    move || {
        card.get().map(|card| {
            view! {
                <section class="card" aria-label=tr!("What to weigh")>
                    <header>
                        <h2>{tr!("What to weigh")}</h2>
                        <span class="quiet">{card.made}</span>
                    </header>
                    <div class="body">
                        {card.parts.into_iter().map(weigh_table).collect_view()}
                        <p><b>{card.allergens}</b></p>
                    </div>
                    <Measures />
                </section>
            }
        })
    }
}

/// The same in cups and spoons, where a table says what they weigh.
#[component]
fn Measures() -> impl IntoView {
    let context = BatchContext::from_context();
    let rows = memo(move || {
        let lines = context.read_rounded(|rounded| Some(in_cups(rounded)));
        lines.unwrap_or_default()
    });
    view! {
        <details class="fold within">
            <summary>
                <span class="title">{tr!("In cups and spoons, only about")}</span>
            </summary>
            <div class="body">
                <p class="quiet">{tr!("A cup holds more or less with every hand; weigh where you can. By the table of weights of the USDA, release 28.")}</p>
                <table class="label-table">
                    <tbody>{move || rows.get().into_iter().map(weigh_row).collect_view()}</tbody>
                </table>
            </div>
        </details>
    }
}

/// What to do, part by part, each with its cautions.
#[component]
fn StepsCard() -> impl IntoView {
    let state = use_app_state();
    let rows = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let names = sheet.formula.parts.iter().map(|one| one.name.clone());
            names.zip(steps(sheet, options)).collect::<Vec<_>>()
        })
    });
    let part = |(name, steps): (String, Vec<String>)| {
        let steps = steps.into_iter().map(|step| view! { <li>{step}</li> });
        view! {
            <h3>{name}</h3>
            <ol>{steps.collect_view()}</ol>
        }
    };
    view! {
        <section class="card" aria-label=tr!("What to do")>
            <header>
                <h2>{tr!("What to do")}</h2>
            </header>
            <div class="body">{move || rows.get().into_iter().map(part).collect_view()}</div>
        </section>
    }
}
