//! A part's card: its name, its share of the flour, its lines.

use leptos::context::Provider;
use leptos::prelude::*;

use super::line_row::{CardTexts, LineRows};
use super::share_box::ShareRows;
use crate::app::part::{Button, Picture, part_word};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::text::{line, notice, tr};

/// A part with its lines.
#[component]
pub fn PartCard(
    /// Which one.
    part: usize,
) -> impl IntoView {
    let (state, section) = use_app_state().card_scope();
    let card = CardTexts::of(state, part);
    let name = card.text(|card| &card.name);
    let kind = move || card.with(|card| card.kind.map(part_word));
    view! {
        <Provider value=state>
            <section class="card stream" node_ref=section data-part=kind aria-label=name>
                <Head part card />
                <ShareRows part card />
                <LineRows card />
                <footer>
                    <Add part card />
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
    /// Its texts.
    card: CardTexts,
) -> impl IntoView {
    let state = use_app_state();
    let open = move |_| state.open(DialogKind::Part(part));
    view! {
        <header>
            <h2>
                <button type="button" class="button bare stream-name" aria-haspopup="dialog" on:click=open>
                    <span class="letter" aria-hidden="true">{line::mark(part)}</span>
                    <span>{card.text(|card| &card.name)}</span>
                </button>
            </h2>
            <span class="quiet follows">{card.text(|card| &card.mass)}</span>
        </header>
    }
}

/// One more ingredient.
#[component]
fn Add(
    /// Which part.
    part: usize,
    /// Its texts.
    card: CardTexts,
) -> impl IntoView {
    let state = use_app_state();
    let pick = move |()| {
        let name = untrack(|| card.with(|card| card.name.clone()));
        state.open(DialogKind::Pick {
            title: tr!("Add to {value}", value = name),
            pick_for: PickFor::NewLine(part),
        });
    };
    let has_room = memo(move || card.with(|card| card.has_room));
    view! {
        <Show when=move || has_room.get() fallback=|| view! { <p class="quiet">{notice::lines_full()}</p> }>
            <Button label=tr!("Add an ingredient") class="bare" picture=Picture::Add on_tap=pick />
        </Show>
    }
}
