//! Baked: what the pieces weigh as they come from the oven and have cooled.

use leptos::prelude::*;

use super::keys::BatchFigureBox;
use crate::engine::batch::BatchFigure;
use crate::words::{say, write};

/// What the pieces weigh once baked.
#[component]
pub fn BakedCard() -> impl IntoView {
    view! {
        <section class="card" aria-label=say!("Baked and cooled")>
            <header>
                <h2>{say!("Baked and cooled")}</h2>
                <span class="quiet">{say!("filling included, topping not")}</span>
            </header>
            <div class="figures">
                <BatchFigureBox label=say!("One piece") figure=BatchFigure::BakedEach look=|scaled, manner| write::mass(scaled.baked_each, manner) />
                <BatchFigureBox label=say!("All together") figure=BatchFigure::Baked look=|scaled, manner| write::mass(scaled.baked, manner) />
            </div>
        </section>
    }
}
