//! A part's card: its name, its share of the flour, its lines.

use leptos::context::Provider;
use leptos::prelude::*;

use super::line_row::{CardTexts, LineRows};
use crate::app::lazy;
use crate::app::part::{IconButton, Picture, part_id, part_word};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::text::{line, notice, tr};

/// A part with its lines.
#[component]
pub fn PartCard(
    /// Which one.
    part: usize,
) -> impl IntoView {
    let (state, is_entered) = use_app_state().entered_scope();
    let card = CardTexts::of(state, part);
    let name = card.text(|card| &card.name);
    let kind = move || card.with(|card| card.kind.map(part_word));
    let is_open = RwSignal::new(false);
    let is_full = memo(move || card.with(|card| !card.has_room));
    view! {
        <Provider value=state>
            <section
                class="card dough-part"
                data-part=kind
                aria-label=name
                on:focusin=move |_| is_entered.set(true)
                on:focusout=move |_| is_entered.set(false)
            >
                <Head part card is_open />
                {move || is_open.get().then(|| lazy::part_shares(part))}
                <LineRows card />
                {move || is_full.get().then(|| view! { <p class="quiet">{notice::lines_full()}</p> })}
            </section>
        </Provider>
    }
}

/// Letter and name of a part, its settings or its weight, and one more ingredient.
#[component]
fn Head(
    /// Which one.
    part: usize,
    /// Its texts.
    card: CardTexts,
    /// Whether its settings are shown.
    is_open: RwSignal<bool>,
) -> impl IntoView {
    let state = use_app_state();
    let open = move |_| state.open(DialogKind::Part(part));
    let pick = move || {
        let name = untrack(|| card.with(|card| card.name.clone()));
        state.open(DialogKind::Pick {
            title: tr!("Add to {value}", value = name),
            pick_for: PickFor::NewLine(part),
        });
    };
    let has_settings = memo(move || card.with(|card| card.flour_share.is_some()));
    let fold = move |_| is_open.update(|open| *open = !*open);
    let settings = move || {
        if has_settings.get() {
            view! {
                <button type="button" class="button bare settings follows" aria-expanded=move || is_open.get().to_string() on:click=fold>
                    {card.text(|card| &card.settings)}
                </button>
            }
            .into_any()
        } else {
            view! { <span class="quiet follows">{card.text(|card| &card.mass)}</span> }.into_any()
        }
    };
    view! {
        <header>
            <h2>
                <button type="button" class="button bare part-name" id=part_id(part) aria-haspopup="dialog" on:click=open>
                    <span class="letter" aria-hidden="true">{line::mark(part)}</span>
                    <span>{card.text(|card| &card.name)}</span>
                </button>
            </h2>
            {settings}
            <IconButton picture=Picture::Add name=tr!("Add an ingredient") on_tap=pick disabled=memo(move || card.with(|card| !card.has_room)) />
        </header>
    }
}
