//! The place: the filling, the syrup, and whether it runs.

use leptos::prelude::*;

use super::ChocolateContext;
use super::add::AddPartCard;
use super::curve_card::CurveCard;
use super::doubts::Doubts;
use super::fill_card::FillCard;
use super::keeping_card::KeepingCard;
use super::melt_card::MeltCard;
use super::rescue_card::RescueCard;
use super::syrup_card::SyrupCard;
use super::weigh_card::WeighCard;
use crate::app::page::HEADING;
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::PartKind;
use crate::sheet::Place;
use crate::text::{
    caution::{Hazard, safety},
    name, tr,
};

/// Will it run?
#[component]
pub fn ChocolatePlace() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let has_syrup = memo(move || context.topping.get().is_some());
    let has_filling = memo(move || context.filling.get().is_some());
    let hot = memo(move || Some(safety(Hazard::HotChocolate, state.options.get())));
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Chocolate)}</h1>
        <div class="newspaper">
            <Show when=move || has_syrup.get() fallback=|| view! { <AddPartCard kind=PartKind::Topping /> }>
                <SyrupCard />
                <CurveCard />
                <Doubts />
            </Show>
            <Show when=move || has_filling.get() fallback=|| view! { <AddPartCard kind=PartKind::Filling /> }>
                <FillCard />
            </Show>
            <Show when=move || has_syrup.get() || has_filling.get()>
                <WeighCard />
            </Show>
            <Show when=move || has_syrup.get()>
                <MeltCard />
                <RescueCard />
                <KeepingCard />
            </Show>
            <AdviceCard title=tr!("Hot chocolate and steam") advice=hot />
        </div>
    }
}
