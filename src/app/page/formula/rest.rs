//! The lower cards of Formula: the results of the parts, and cautions.

use leptos::context::Provider;
use leptos::prelude::*;

use super::about_card::AboutCard;
use super::cautions::Cautions;
use super::compare_card::CompareCard;
use super::figures_card::FiguresCard;
use super::target_card::TargetCard;
use super::water_card::WaterCard;
use super::what_ifs::WhatIfs;
use crate::app::state::use_app_state;

/// All cards but those of the parts.
#[component]
pub fn FormulaRest() -> impl IntoView {
    let (state, section) = use_app_state().card_scope();
    view! {
        <div class="cards">
            <WaterCard />
            <WhatIfs />
            <TargetCard />
            <Provider value=state>
                <section class="cards" node_ref=section>
                    <Cautions />
                    <FiguresCard />
                </section>
            </Provider>
        </div>
        <div class="columns after">
            <CompareCard />
            <AboutCard />
        </div>
    }
}
