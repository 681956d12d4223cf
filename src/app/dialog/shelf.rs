//! The shelf: the formulas that are kept, and the bin.

use leptos::prelude::*;

use crate::app::browser::clock;
use crate::app::browser::live_region::announce;
use crate::app::part::{Button, IconButton, Picture};
use crate::app::state::{memo, use_app_state};
use crate::sheet::{Id, Sheet, ShelfEntry};
use crate::text::{example, format, notice, search, tr};

/// How many are drawn at first, and with each tap on "more": a thousand would take too long.
const AT_ONCE: usize = 30;

/// The formulas that are kept.
#[component]
pub fn ShelfDialog() -> impl IntoView {
    let state = use_app_state();
    state.flush();
    view! {
        <Nudge />
        <Show when=move || state.is_trial() fallback=move || view! { <Begin /> }>
            <p class="advice">{tr!("A trial is on. Keep it or drop it before another formula is opened.")}</p>
        </Show>
        <Formulas />
        <Bin />
    }
}

/// A word about saving to a file, after many changes.
#[component]
fn Nudge() -> impl IntoView {
    let state = use_app_state();
    move || {
        let changes = state.changes_since_backup.get();
        notice::save_a_file(changes, state.options.get())
            .map(|advice| view! { <p class="advice">{advice}</p> })
    }
}

/// A new formula, or a copy of the one that is open.
#[component]
fn Begin() -> impl IntoView {
    let state = use_app_state();
    let open = move |sheet: &Sheet| {
        state.close();
        state.open_new(sheet);
    };
    let new = move |()| open(&example::in_words(state.sheet().emptied()));
    let copy = move |()| {
        let sheet = state.sheet();
        open(&sheet.copied(&tr!("Copy of {name}", name = sheet.name)));
    };
    view! {
        <div class="buttons">
            <Button says=tr!("New formula") picture=Picture::Add tapped=new />
            <Button says=tr!("Copy of this one") tapped=copy />
        </div>
    }
}

/// The formulas, searched by name.
#[component]
fn Formulas() -> impl IntoView {
    let state = use_app_state();
    let wanted = RwSignal::new(String::new());
    let drawn = RwSignal::new(AT_ONCE);
    let found = memo(move || {
        wanted.with(|wanted| state.shelf.with(|shelf| search::formulas(wanted, shelf)))
    });
    let shown =
        move || found.with(|found| found.iter().take(drawn.get()).cloned().collect::<Vec<_>>());
    let more = move || found.with(|found| found.len() > drawn.get());
    view! {
        <label class="heard" for="shelf-search">{tr!("Search by name")}</label>
        <input
            id="shelf-search"
            class="search"
            type="search"
            autocomplete="off"
            placeholder=tr!("Search by name")
            on:input:target=move |event| wanted.set(event.target().value())
        />
        <ul class="shelf">
            <For each=shown key=|entry| (entry.id.clone(), entry.name.clone()) let(entry)>
                <Saved entry />
            </For>
        </ul>
        <Show when=more>
            <Button says=tr!("Show more") tapped=move |()| drawn.update(|drawn| *drawn = drawn.saturating_add(AT_ONCE)) />
        </Show>
    }
}

/// One formula: opened on a tap, or put into the bin.
#[component]
fn Saved(
    /// What is known of it.
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
    let binned = tr!("Put {value} into the bin", value = entry.name);
    let said = tr!(
        "{first} of dough, {second}",
        first = format::mass(entry.dough, options),
        second = clock::day(entry.changed.milliseconds())
    );
    view! {
        <li>
            <button type="button" class="pick" aria-current=current on:click=open>
                <span>{entry.name}</span>
                <span class="quiet">{said}</span>
            </button>
            <IconButton picture=Picture::Remove name=binned tapped=bin />
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
                        <Binned id=entry.id name=entry.name />
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
    let first = move || view! { <Button says=tr!("Empty the bin for good") class="risky" tapped=move |()| asked.set(true) /> };
    view! {
        <Show when=move || asked.get() fallback=first>
            <div class="notice" role="alert">
                <p>{move || notice::empty_the_bin(count.get())}</p>
                <Button says=tr!("Delete for good") class="risky" tapped=empty />
                <Button says=tr!("Leave the bin as it is") tapped=move |()| asked.set(false) />
            </div>
        </Show>
    }
}

/// One formula in the bin.
#[component]
fn Binned(
    /// The id it is kept under.
    id: Id,
    /// As the user calls it.
    name: String,
) -> impl IntoView {
    let state = use_app_state();
    let says = view! { {tr!("Put back")} <span class="heard">{format!(": {name}")}</span> };
    view! {
        <li>
            <span>{name}</span>
            <button type="button" class="button" on:click=move |_| state.restore(&id)>
                {says}
            </button>
        </li>
    }
}
