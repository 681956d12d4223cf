//! The cards of a visit: how much, what to weigh, what to do; and whether it works with no signal.

use leptos::prelude::*;

use super::how_many::HowMany;
use super::notice::NoticeClosed;
use super::steps::{StepsCard, usual_steps};
use crate::app::browser::{offline, storage};
use crate::app::page::{BatchContext, WeighingAids};
use crate::app::part::{Button, weigh_row, weigh_table};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::results::day::ListedStep;
use crate::storage::key;
use crate::text::share::{CardList, bench_card, in_cups};
use crate::text::{notice, tr, weighing};

/// What a visitor sees first.
#[component]
pub fn VisitCards() -> impl IntoView {
    let list = usual_steps();
    view! {
        <div class="newspaper visit">
            <HowMany />
            <WeighCard list />
            <StepsCard list />
            <HandedCard />
        </div>
        <Written />
    }
}

/// Whether it works with no signal by now, and the ways on.
#[component]
fn HandedCard() -> impl IntoView {
    let state = use_app_state();
    let (saved, closed) = (RwSignal::new(None), NoticeClosed::from_context());
    offline::when_cached(saved);
    let offline = move || match saved.get() {
        Some(true) => notice::offline_ready(),
        Some(false) => notice::offline_never(),
        None => notice::offline_soon(),
    };
    let hide = move |()| {
        if let Some(id) = state.open_id.get_untracked() {
            storage::remove(&key::of_handed(&id));
            state.open_id.notify();
        }
    };
    view! {
        <section class="card" aria-label=tr!("Shared with you")>
            <div class="body handed">
                <p role="status" class="follows quiet">{offline}</p>
                <div class="buttons">
                    <Show when=move || state.is_visit() && closed.get()>
                        <Button label=tr!("Keep it") on_tap=move |()| state.save_visit() />
                    </Show>
                    <Show when=move || !state.is_trial()>
                        <Button label=tr!("Try something without changing it") on_tap=move |()| state.begin_trial() />
                    </Show>
                    <Show when=move || !state.is_visit()>
                        <Button label=tr!("Always open on the formula") on_tap=hide />
                    </Show>
                </div>
            </div>
        </section>
    }
}

/// What to weigh for the batch, and what must be named.
#[component]
fn WeighCard(
    /// The steps of the bench, once they are known.
    list: RwSignal<Option<Vec<ListedStep>>>,
) -> impl IntoView {
    let state = use_app_state();
    let (context, workspace) = (BatchContext::from_context(), WorkspaceStore::from_context());
    let card = memo(move || {
        let (sheet, options) = (state.current(), state.options.get());
        let list = list.get().unwrap_or_default();
        let list = CardList {
            list: &list,
            steps: &[],
        };
        context.results.with(|batch| {
            workspace
                .pantry
                .with(|pantry| bench_card(&sheet, batch, list, (pantry, None), options))
        })
    });
    let made_here = made_here();
    move || {
        card.get().map(|card| {
            view! {
                <section class="card" aria-label=tr!("What to weigh")>
                    <div class="body weights">
                        <p class="quiet">{made_here}</p>
                        {card.parts.into_iter().map(weigh_table).collect_view()}
                        <WeighingAids />
                        <p class="quiet">{card.made}</p>
                        <p><b>{card.allergens}</b></p>
                    </div>
                    <Measures />
                </section>
            }
        })
    }
}

/// Whose weights these are: of all pieces that are made here.
fn made_here() -> Memo<String> {
    let state = use_app_state();
    let context = BatchContext::from_context();
    memo(move || {
        let options = state.options.get();
        let pieces = context.read_scaled(|scaled| weighing::pieces(&scaled.pieces, options));
        let pieces = pieces.map(|pieces| tr!("To weigh for {pieces}", pieces = pieces));
        pieces.unwrap_or_default()
    })
}

/// Above the formula: it is the one that was written, not what is weighed here.
#[component]
fn Written() -> impl IntoView {
    view! {
        <section class="written" aria-label=tr!("The formula as written")>
            <h2>{tr!("The formula as written")}</h2>
            <p class="quiet">{tr!("Made once, not scaled. To bake, go by the weights above.")}</p>
        </section>
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
