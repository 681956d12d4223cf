//! Baked: what the pieces weigh as they come from the oven and have cooled.

use leptos::prelude::*;

use super::keys::BatchFigureBox;
use crate::engine::batch::BatchFigure;
use crate::words::write;

/// What the pieces weigh once baked.
#[component]
pub fn BakedCard() -> impl IntoView {
    view! {
        <section class="card" aria-label="Baked and cooled">
            <header>
                <h2>"Baked and cooled"</h2>
                <span class="quiet">"filling included, topping not"</span>
            </header>
            <div class="figures">
                <BatchFigureBox label="One piece" figure=BatchFigure::BakedEach look=|scaled, manner| write::mass(scaled.baked_each, manner) />
                <BatchFigureBox label="All together" figure=BatchFigure::Baked look=|scaled, manner| write::mass(scaled.baked, manner) />
            </div>
        </section>
    }
}
