//! The cards of a visit: how much, what to weigh, what to do; and whether it works with no signal.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::how_many::HowMany;
use super::notice::NoticeClosed;
use crate::app::browser::{clock, offline, storage};
use crate::app::lazy::{self, records};
use crate::app::page::{BatchContext, FormulaCards, HEADING};
use crate::app::part::{Button, weigh_table};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::results::day::ListedStep;
use crate::sheet::Place;
use crate::storage::key;
use crate::text::share::{CardList, bench_card};
use crate::text::{name, notice, tr, weighing};

/// The steps of the bench, once they are known.
pub type StepList = RwSignal<Option<Vec<ListedStep>>>;

/// What a visitor sees first. What is not looked at first is asked for once the weights are there.
#[component]
pub fn VisitCards() -> impl IntoView {
    let list = StepList::new(None);
    let (begins, has_rest) = (RwSignal::new(false), RwSignal::new(false));
    let tin = RwSignal::new(false);
    clock::after_frame(move || {
        // The visitor may have gone to another place.
        let _gone = begins.try_set(true);
        spawn_local(async move {
            let came = lazy::load_visit_rest().await;
            let _gone = has_rest.try_set(came);
            // What keeps the copy is there before it is asked for.
            records::then(|| ());
        });
    });
    view! {
        <h1 id=HEADING class="visually-hidden" tabindex="-1">{name::place(Place::Formula)}</h1>
        <div class="newspaper visit">
            <HowMany tin />
            <WeighCard list has_rest tin />
            {move || begins.get().then(|| lazy::visit_steps(list))}
            {move || begins.get().then(|| view! { <HandedCard /> })}
        </div>
        {move || begins.get().then(|| view! { <Written /> })}
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
                    <Show when=move || state.is_visit() && closed.get() && !state.is_trial()>
                        <Button label=tr!("Keep it") on_tap=move |()| records::then(move || state.save_visit()) />
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
    /// The steps of the bench.
    list: StepList,
    /// Whether what helps with it has come.
    has_rest: RwSignal<bool>,
    /// Whether the visitor looks at the own tin, or has.
    tin: RwSignal<bool>,
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
    let is_there = memo(move || card.with(Option::is_some));
    let weights = move || {
        card.get().map(|card| {
            view! {
                <div class="body weights">
                    <p class="quiet">{made_here}</p>
                    {card.parts.into_iter().map(weigh_table).collect_view()}
                    <p class="quiet">{card.made}</p>
                    <p><b>{card.allergens}</b></p>
                </div>
            }
        })
    };
    // What helps stays as it was opened while the weights follow.
    view! {
        <Show when=move || is_there.get()>
            <section class="card" aria-label=tr!("What to weigh")>
                {move || (has_rest.get() && tin.get()).then(lazy::not_yet_for_tin)}
                {weights}
                {move || has_rest.get().then(lazy::weighing_help)}
            </section>
        </Show>
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

/// The formula, closed until it is asked for or something is tried: it is the one that was written,
/// not what is weighed here.
#[component]
fn Written() -> impl IntoView {
    let state = use_app_state();
    let opened = RwSignal::new(false);
    Effect::new(move |_| {
        if state.is_trial() {
            opened.set(true);
        }
    });
    let toggled = move |event: leptos::ev::Event| {
        opened.set(event_target::<web_sys::HtmlElement>(&event).has_attribute("open"));
    };
    let title = move || {
        if state.is_trial() {
            tr!("The formula as you try it")
        } else {
            tr!("The formula as written")
        }
    };
    view! {
        <section class="written" aria-label=title>
            <details class="card fold" open=move || opened.get() on:toggle=toggled>
                <summary>
                    <h2 class="title">{title}</h2>
                </summary>
                <p class="body quiet">{tr!("Made once, not scaled. To bake, go by the weights above.")}</p>
            </details>
            <Show when=move || opened.get()>
                <FormulaCards />
            </Show>
        </section>
    }
}
