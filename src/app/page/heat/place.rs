//! The place: advice first, then the kitchen, the bowl, the paste, its cooling, the bake.

use leptos::prelude::*;

use super::HeatContext;
use super::advice::HeatAdvice;
use super::bake_card::BakeCard;
use super::bowl_card::BowlCard;
use super::cooling_card::CoolingCard;
use super::factor_card::FactorCard;
use super::kitchen_card::KitchenCard;
use super::paste_card::PasteCard;
use crate::app::page::{Day, HEADING};
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::sheet::{Id, Place};
use crate::text::{
    caution::{Hazard, safety},
    name, tr,
};

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
    let any = move || pastes.with(|pastes| !pastes.is_empty());
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Heat)}</h1>
        <div class="newspaper">
            <HeatAdvice />
            <KitchenCard />
            <BowlCard />
            <FactorCard />
            <Safety title=tr!("At the mixer") step=Hazard::Mixing />
            <For each=move || pastes.get() key=|part| *part let(part)>
                <PasteCard part />
            </For>
            <Show when=any>
                <Safety title=tr!("Boiling water and steam") step=Hazard::Scalding />
            </Show>
            <CoolingCard />
            <Show when=any>
                <Safety title=tr!("Keeping paste and dough cold") step=Hazard::KeepingCold />
            </Show>
            <BakeCard />
            <Safety title=tr!("At the oven") step=Hazard::Baking />
        </div>
    }
}

#[component]
fn Safety(
    /// What it is about.
    title: &'static str,
    /// The step of the work.
    step: Hazard,
) -> impl IntoView {
    let state = use_app_state();
    let advice = memo(move || Some(safety(step, state.options.get())));
    view! { <AdviceCard title advice /> }
}
