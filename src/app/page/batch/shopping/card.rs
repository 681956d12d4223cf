//! Shopping: what to buy in packs, ticked off as it goes into the basket, and what it costs.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::pantry::PantryBox;
use crate::app::browser::clipboard;
use crate::app::browser::live_region::announce;
use crate::app::page::BatchContext;
use crate::app::part::{AnswerRow, Button, Figure, Shown, TextBox, WorkingButton};
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::engine::shopping::ShoppingError;
use crate::results::batch::shopping::{self, ShoppingResults};
use crate::sheet::{Pantry, plain};
use crate::text::{
    self, ErrorText, batch_answer,
    shopping::{ShoppingRow, ShoppingView},
    tr,
};

/// What to buy, and what it costs.
#[component]
pub fn ShoppingCard() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let context = BatchContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        workspace
            .pantry
            .with(|pantry| match bought(state, workspace, context, pantry) {
                Some(Ok(found)) => batch_answer::shopping(&found, &pantry.currency, options),
                Some(Err(_)) | None => tr!("not known").to_owned(),
            })
    });
    view! {
        <AnswerRow tucked=true title=tr!("Shopping and cost") answer>
            <Content />
        </AnswerRow>
    }
}

/// What is bought for the batch, or for the class that it is.
fn bought(
    state: AppState,
    workspace: WorkspaceStore,
    context: BatchContext,
    pantry: &Pantry,
) -> Option<Result<ShoppingResults, ShoppingError>> {
    let (settings, sheet) = (workspace.settings.get(), state.current());
    let scales = state.kitchen.with(|kitchen| kitchen.scales);
    let results = context.results;
    results.with(|batch| shopping::of_sheet(&sheet, batch, &settings, scales, pantry))
}

/// The list, its cost, and the pantry.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let context = BatchContext::from_context();
    let view = memo(move || {
        let options = state.options.get();
        workspace.pantry.with(|pantry| {
            let found = bought(state, workspace, context, pantry)?;
            let view = found.map(|found| text::shopping::view(&found, &pantry.currency, options));
            Some(view.map_err(|error| error.sentence(options)))
        })
    });
    let currency = memo(move || workspace.pantry.with(|pantry| pantry.currency.clone()));
    let name_money = move |text: String| {
        workspace
            .pantry
            .update(|pantry| pantry.currency = plain::name(&text, Pantry::CURRENCY_LENGTH));
    };
    view! {
        <div class="body">
                {move || match view.get() {
                    Some(Ok(view)) => view! { <List view /> }.into_any(),
                    Some(Err(says)) => view! { <p>{says}</p> }.into_any(),
                    None => ().into_any(),
                }}
                <TextBox id="currency" label=tr!("Currency") text=currency on_input=Callback::new(name_money) max_length=Pantry::CURRENCY_LENGTH />
                <PantryBox />
        </div>
    }
}

#[component]
fn List(
    /// Its content.
    view: ShoppingView,
) -> impl IntoView {
    let ShoppingView {
        rows,
        used,
        each,
        paid,
        missing,
        of_class,
        text,
        working,
    } = view;
    let copy = move |()| {
        let text = text.clone();
        spawn_local(async move {
            announce(match clipboard::copy(text).await {
                Ok(()) => tr!("Copied."),
                Err(clipboard::NotCopied) => tr!("This browser does not copy by itself."),
            });
        });
    };
    let figure = |value: String| Signal::stored(Shown { value, was: None });
    let working = Callback::new(move |()| working.clone());
    view! {
        {of_class.map(|says| view! { <p>{says}</p> })}
        <ul class="plain shopping">{rows.into_iter().map(row).collect_view()}</ul>
        <div class="figures">
            <Figure label=tr!("Used in this batch") shown=figure(used) working />
            <Figure label=tr!("A piece") shown=figure(each) working />
            <Figure label=tr!("Paid for whole packs") shown=figure(paid) working />
        </div>
        {missing.map(|missing| view! { <p class="quiet">{missing}</p> })}
        <div class="buttons"><Button label=tr!("Copy the list") on_tap=copy /></div>
    }
}

/// A row one can tick off; where its pack is known, it opens how packs and cost came about.
fn row(row: ShoppingRow) -> impl IntoView {
    let (title, shown, working) = (row.name.clone(), row.buy.clone(), row.working);
    let has_working = !working.is_empty();
    let worked = Callback::new(move |()| (shown.clone(), working.clone()));
    view! {
        <li>
            <label class="tick">
                <input type="checkbox" />
                <span><b>{row.name}</b> " " {row.needed} <br /> <span class="quiet">{row.buy}</span>{row.packet.map(|says| view! { <br /> <span class="quiet">{says}</span> })}</span>
                <span class="cost">{row.cost}</span>
            </label>
            {has_working.then(|| view! { <WorkingButton title=Signal::stored(title) worked /> })}
        </li>
    }
}
