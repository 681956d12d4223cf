//! A stream's card: its name, its share of the flour, its lines.

use leptos::context::Provider;
use leptos::prelude::*;

use super::line_row::LineRow;
use super::share_box::ShareRows;
use crate::app::part::{Button, Picture, stream_word};
use crate::app::state::{Opened, PickFor, State, memo};
use crate::engine::formula::LineAt;
use crate::words::{line, notice, say, write};

/// A stream with its lines.
#[component]
pub fn StreamCard(
    /// Which one.
    stream: usize,
) -> impl IntoView {
    let (state, card) = State::here().in_card();
    let name = memo(move || {
        state.with(|sheet| {
            sheet
                .formula
                .streams
                .get(stream)
                .map(|own| own.name.clone())
                .unwrap_or_default()
        })
    });
    let kind =
        memo(move || state.with(|sheet| sheet.formula.streams.get(stream).map(|own| own.kind)));
    let lines = memo(move || {
        state.with(|sheet| {
            sheet
                .formula
                .streams
                .get(stream)
                .map_or(0, |own| own.lines.len())
        })
    });
    view! {
        <Provider value=state>
            <section class="card stream" node_ref=card data-stream=move || kind.get().map(stream_word) aria-label=name>
                <Head stream name />
                <ShareRows stream />
                <For each=move || 0..lines.get() key=|line| *line let(line)>
                    <LineRow at=LineAt { stream, line } />
                </For>
                <footer>
                    <Add stream name />
                </footer>
            </section>
        </Provider>
    }
}

/// Letter, name and weight of a stream.
#[component]
fn Head(
    /// Which one.
    stream: usize,
    /// As the user calls it.
    name: Memo<String>,
) -> impl IntoView {
    let state = State::here();
    let mass = memo(move || {
        let manner = state.manner.get();
        state.with(|sheet| {
            let own = sheet.formula.streams.get(stream);
            own.map(|own| write::mass(own.mass(), manner))
                .unwrap_or_default()
        })
    });
    let open = move |_| state.open(Opened::Stream(stream));
    view! {
        <header>
            <h2>
                <button type="button" class="button bare stream-name" aria-haspopup="dialog" on:click=open>
                    <span class="letter" aria-hidden="true">{line::mark(stream)}</span>
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
    /// Which stream.
    stream: usize,
    /// As the user calls it.
    name: Memo<String>,
) -> impl IntoView {
    let state = State::here();
    let pick = move |()| {
        state.open(Opened::Pick {
            title: say!("Add to {}", name.get_untracked()),
            pick_for: PickFor::NewLine(stream),
        });
    };
    let has_room = memo(move || state.with(|sheet| sheet.formula.has_room()));
    view! {
        <Show when=move || has_room.get() fallback=|| view! { <p class="quiet">{notice::lines_full()}</p> }>
            <Button says=say!("Add an ingredient") class="bare" picture=Picture::Add tapped=pick />
        </Show>
    }
}
