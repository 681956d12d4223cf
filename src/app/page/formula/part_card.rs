//! A part's card: its name, its share of the flour, its lines.

use leptos::context::Provider;
use leptos::prelude::*;

use super::line_row::LineRow;
use super::share_box::ShareRows;
use crate::app::part::{Button, Picture, part_word};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::engine::formula::LineAt;
use crate::results::formula::{self as results, PartResults};
use crate::text::{format, line, notice, tr};

/// A part with its lines.
#[component]
pub fn PartCard(
    /// Which one.
    part: usize,
) -> impl IntoView {
    let (state, card) = use_app_state().card_scope();
    let results = memo(move || {
        let saved = state.saved_in_trial();
        results::part(&state.current(), saved.as_deref(), part)
    });
    let name = memo(move || {
        state.with(|sheet| {
            let own = sheet.formula.parts.get(part);
            own.map(|own| own.name.clone()).unwrap_or_default()
        })
    });
    let kind = memo(move || results.with(|results| results.as_ref().map(|own| own.kind)));
    let lines = memo(move || results.with(|own| own.as_ref().map_or(0, |own| own.lines)));
    view! {
        <Provider value=state>
            <section class="card stream" node_ref=card data-part=move || kind.get().map(part_word) aria-label=name>
                <Head part name results />
                <ShareRows part results />
                <For each=move || 0..lines.get() key=|line| *line let(line)>
                    <LineRow at=LineAt { part, line } />
                </For>
                <footer>
                    <Add part name results />
                </footer>
            </section>
        </Provider>
    }
}

/// Letter, name and weight of a part.
#[component]
fn Head(
    /// Which one.
    part: usize,
    /// As the user calls it.
    name: Memo<String>,
    /// Its numbers.
    results: Memo<Option<PartResults>>,
) -> impl IntoView {
    let state = use_app_state();
    let mass = memo(move || {
        let options = state.options.get();
        let mass = |own: &PartResults| format::mass(own.mass, options);
        results.with(|own| own.as_ref().map(mass).unwrap_or_default())
    });
    let open = move |_| state.open(DialogKind::Part(part));
    view! {
        <header>
            <h2>
                <button type="button" class="button bare stream-name" aria-haspopup="dialog" on:click=open>
                    <span class="letter" aria-hidden="true">{line::mark(part)}</span>
                    <span>{name}</span>
                </button>
            </h2>
            <span class="quiet follows">{mass}</span>
        </header>
    }
}

/// One more ingredient.
#[component]
fn Add(
    /// Which part.
    part: usize,
    /// As the user calls it.
    name: Memo<String>,
    /// Its numbers.
    results: Memo<Option<PartResults>>,
) -> impl IntoView {
    let state = use_app_state();
    let pick = move |()| {
        state.open(DialogKind::Pick {
            title: tr!("Add to {value}", value = name.get_untracked()),
            pick_for: PickFor::NewLine(part),
        });
    };
    let has_room = memo(move || results.with(|own| own.as_ref().is_none_or(|own| own.has_room)));
    view! {
        <Show when=move || has_room.get() fallback=|| view! { <p class="quiet">{notice::lines_full()}</p> }>
            <Button label=tr!("Add an ingredient") class="bare" picture=Picture::Add on_tap=pick />
        </Show>
    }
}
