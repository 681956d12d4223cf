//! The place: kitchen, dough, pastes, cooling, bake, and until it is cut, a row each.

use leptos::prelude::*;

use super::HeatContext;
use super::bake_card::{BakeCard, CutRow};
use super::cooling_card::CoolingCard;
use super::dough_row::DoughRow;
use super::kitchen_card::KitchenCard;
use super::paste_card::PasteCard;
use crate::app::page::{Day, HEADING};
use crate::app::state::{memo, use_app_state};
use crate::sheet::{Id, Place};
use crate::text::name;

/// The place for temperatures and food safety.
#[component]
pub fn HeatPlace() -> impl IntoView {
    let context = HeatContext::from_context();
    // The rises of the formula that is open belong to its run.
    let (state, day) = (use_app_state(), Day::from_context());
    day.open();
    Effect::new(move |opened: Option<Option<Id>>| {
        let id = state.open_id.get();
        if opened.is_some_and(|before| before != id) {
            untrack(|| day.open());
        }
        id
    });
    let pastes = memo(move || {
        context.results.with(|results| {
            results
                .pastes
                .iter()
                .map(|paste| paste.part)
                .collect::<Vec<_>>()
        })
    });
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Heat)}</h1>
        <div class="columns">
            <div class="cards">
                <KitchenCard />
                <DoughRow />
            </div>
            <div class="cards rows aside">
                <For each=move || pastes.get() key=|part| *part let(part)>
                    <PasteCard part />
                </For>
                <CoolingCard />
            </div>
            <div class="cards rows">
                <BakeCard />
                <CutRow />
            </div>
        </div>
    }
}
