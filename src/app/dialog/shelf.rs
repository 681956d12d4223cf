//! The shelf: the stored formulas, and the bin.

use leptos::prelude::*;

use crate::app::browser::clock;
use crate::app::browser::live_region::announce;
use crate::app::part::{Button, IconButton, Picture};
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::sheet::{Id, Place, Sheet, ShelfEntry};
use crate::text::{example, format, notice, search, tr};

/// Rows `shown_rows` at first, and added by each tap on "more": a thousand would take too long.
const AT_ONCE: usize = 30;

/// The stored formulas.
#[component]
pub fn ShelfDialog() -> impl IntoView {
    let state = use_app_state();
    state.flush();
    view! {
        <FileSuggestion />
        <Show when=move || state.is_trial() fallback=move || view! { <NewFormula /> }>
            <p class="advice">{tr!("A trial is on. Keep it or drop it before another formula is opened.")}</p>
        </Show>
        <Formulas />
        <Bin />
    }
}

/// Suggests saving to a file, after many changes.
#[component]
fn FileSuggestion() -> impl IntoView {
    let state = use_app_state();
    move || {
        let changes = state.changes_since_backup.get();
        notice::save_a_file(changes, state.options.get())
            .map(|advice| view! { <p class="advice">{advice}</p> })
    }
}

/// A new formula, or a copy of the one that is open.
#[component]
fn NewFormula() -> impl IntoView {
    let state = use_app_state();
    let open = move |sheet: &Sheet| {
        state.close();
        state.open_new(sheet);
    };
    let new = move |()| {
        state.open_new(&example::in_words(state.sheet().emptied()));
        // What goes in is typed there.
        state.go_to(Place::Formula);
        state.open(DialogKind::NewParts);
    };
    let copy = move |()| open(&state.copy_of(&state.sheet()));
    view! {
        <div class="buttons">
            <Button label=tr!("New formula") picture=Picture::Add on_tap=new />
            <Button label=tr!("Copy of this formula") on_tap=copy />
        </div>
    }
}

/// The formulas, searched by name.
#[component]
fn Formulas() -> impl IntoView {
    let state = use_app_state();
    let typed = RwSignal::new(String::new());
    let shown_rows = RwSignal::new(AT_ONCE);
    let found =
        memo(move || typed.with(|typed| state.shelf.with(|shelf| search::formulas(typed, shelf))));
    let shown = move || {
        found.with(|found| {
            found
                .iter()
                .take(shown_rows.get())
                .cloned()
                .collect::<Vec<_>>()
        })
    };
    let more = move || found.with(|found| found.len() > shown_rows.get());
    view! {
        <label class="visually-hidden" for="shelf-search">{tr!("Search by name")}</label>
        <input
            id="shelf-search"
            class="search"
            type="search"
            autocomplete="off"
            placeholder=tr!("Search by name")
            on:input:target=move |event| typed.set(event.target().value())
        />
        <ul class="shelf">
            <For each=shown key=|entry| (entry.id.clone(), entry.name.clone()) let(entry)>
                <FormulaRow entry />
            </For>
        </ul>
        <Show when=more>
            <Button label=tr!("Show more") on_tap=move |()| shown_rows.update(|shown_rows| *shown_rows = shown_rows.saturating_add(AT_ONCE)) />
        </Show>
    }
}

/// One formula: opened on a tap, or put into the bin.
#[component]
fn FormulaRow(
    /// Its line in the index.
    entry: ShelfEntry,
) -> impl IntoView {
    let state = use_app_state();
    let options = state.options.get_untracked();
    let id = entry.id.clone();
    let current = move || (state.open_id.get().as_ref() == Some(&id)).then_some("true");
    let (opens, bins, gone) = (entry.id.clone(), entry.id.clone(), entry.name.clone());
    let open = move |_| {
        if !state.trial.with_untracked(Option::is_some) && state.open_formula(&opens) {
            state.close();
        }
    };
    let bin = move |()| {
        state.bin(&bins);
        announce(&tr!("{gone} is in the bin.", gone = gone));
    };
    let binned = tr!("Delete {value}", value = entry.name);
    let wording = tr!(
        "{first} of dough, {second}",
        first = format::mass(entry.dough, options),
        second = clock::day(entry.changed.milliseconds())
    );
    view! {
        <li>
            <button type="button" class="pick" aria-current=current on:click=open>
                <span>{entry.name}</span>
                <span class="quiet">{wording}</span>
            </button>
            <IconButton picture=Picture::Remove name=binned on_tap=bin />
        </li>
    }
}

/// What was put into the bin, until it is emptied.
#[component]
fn Bin() -> impl IntoView {
    let state = use_app_state();
    let binned = memo(move || {
        state.shelf.with(|shelf| {
            shelf
                .binned()
                .into_iter()
                .map(|(entry, _)| entry.clone())
                .collect::<Vec<_>>()
        })
    });
    let each =
        move || binned.with(|binned| binned.iter().take(AT_ONCE).cloned().collect::<Vec<_>>());
    view! {
        <Show when=move || binned.with(|binned| !binned.is_empty())>
            <details>
                <summary>{tr!("The bin")}</summary>
                <ul class="shelf">
                    <For each=each key=|entry| entry.id.clone() let(entry)>
                        <BinRow id=entry.id name=entry.name />
                    </For>
                </ul>
                <EmptyBin count=Signal::derive(move || binned.with(Vec::len)) />
            </details>
        </Show>
    }
}

/// Emptying the bin, asked for twice: nothing brings it back.
#[component]
fn EmptyBin(
    /// How many formulas are in it.
    count: Signal<usize>,
) -> impl IntoView {
    let state = use_app_state();
    let asked = RwSignal::new(false);
    let empty = move |()| {
        state.empty_bin();
        announce(notice::bin_emptied());
    };
    let first = move || view! { <Button label=tr!("Empty the bin for good") class="danger" on_tap=move |()| asked.set(true) /> };
    view! {
        <Show when=move || asked.get() fallback=first>
            <div class="notice" role="alert">
                <p>{move || notice::empty_the_bin(count.get())}</p>
                <Button label=tr!("Delete for good") class="danger" on_tap=empty />
                <Button label=tr!("Leave the bin as it is") on_tap=move |()| asked.set(false) />
            </div>
        </Show>
    }
}

/// One formula in the bin.
#[component]
fn BinRow(
    /// Its id.
    id: Id,
    /// The name that the user gave it.
    name: String,
) -> impl IntoView {
    let state = use_app_state();
    let says =
        view! { {tr!("Restore")} <span class="visually-hidden">{format!(": {name}")}</span> };
    view! {
        <li>
            <span>{name}</span>
            <button type="button" class="button" on:click=move |_| state.restore(&id)>
                {says}
            </button>
        </li>
    }
}
