//! The place: the syrup, whether it runs, how it is melted, and the filling, a row each.

use leptos::prelude::*;

use super::ChocolateContext;
use super::add::AddPartCard;
use super::fill_card::FillCard;
use super::keeping_card::KeepingCard;
use super::melt_card::MeltCard;
use super::rescue_card::RescueCard;
use super::syrup_card::SyrupCard;
use super::weigh_card::WeighCard;
use crate::app::page::HEADING;
use crate::app::state::memo;
use crate::engine::formula::PartKind;
use crate::sheet::Place;
use crate::text::name;

/// Will it run?
#[component]
pub fn ChocolatePlace() -> impl IntoView {
    let context = ChocolateContext::from_context();
    let has_syrup = memo(move || context.topping.get().is_some());
    let has_filling = memo(move || context.filling.get().is_some());
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Chocolate)}</h1>
        <div class="columns">
            <div class="cards">
                <Show when=move || has_syrup.get() fallback=|| view! { <AddPartCard kind=PartKind::Topping /> }>
                    <SyrupCard />
                </Show>
            </div>
            <div class="cards rows aside">
                <Show when=move || has_syrup.get()>
                    <MeltCard />
                    <RescueCard />
                </Show>
                <Show when=move || has_filling.get() fallback=|| view! { <AddPartCard kind=PartKind::Filling /> }>
                    <FillCard />
                </Show>
            </div>
            <div class="cards rows">
                <Show when=move || has_syrup.get() || has_filling.get()>
                    <WeighCard />
                </Show>
                <Show when=move || has_syrup.get()>
                    <KeepingCard />
                </Show>
            </div>
        </div>
    }
}
