//! Baked: what the pieces weigh as they come from the oven and have cooled.

use leptos::prelude::*;

use super::key_figures::BatchFigureBox;
use crate::engine::batch::BatchFigure;
use crate::text::{format, tr};

/// What the pieces weigh once baked.
#[component]
pub fn BakedCard() -> impl IntoView {
    view! {
        <section class="card" aria-label=tr!("Baked and cooled")>
            <header>
                <h2>{tr!("Baked and cooled")}</h2>
                <span class="quiet">{tr!("filling included, topping not")}</span>
            </header>
            <div class="figures">
                <BatchFigureBox label=tr!("One piece") figure=BatchFigure::BakedEach select=|scaled, options| format::mass(scaled.baked_each, options) />
                <BatchFigureBox label=tr!("All together") figure=BatchFigure::Baked select=|scaled, options| format::mass(scaled.baked, options) />
            </div>
        </section>
    }
}
