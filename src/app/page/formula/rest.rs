//! The rows of Formula below its parts, each of which says its answer and opens.

use leptos::prelude::*;

use super::about_card::AboutCard;
use super::cautions::Cautions;
use super::compare_card::CompareCard;
use super::figures_card::FiguresCard;
use super::water_card::WaterCard;
use super::what_ifs::WhatIfs;

/// All rows below the cards of the parts.
#[component]
pub fn FormulaRest() -> impl IntoView {
    view! {
        <div class="cards rows">
            <Cautions />
            <WhatIfs />
        </div>
        <div class="cards rows aside">
            <WaterCard />
            <FiguresCard />
            <CompareCard />
            <AboutCard />
        </div>
    }
}
