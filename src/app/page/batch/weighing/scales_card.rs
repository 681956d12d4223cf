//! Scales: the steps of the kitchen scale, and of a pocket scale where there is one.

use crate::text::tr;
use leptos::prelude::*;

use crate::app::part::{KitchenLink, ScaleBoxes};

/// The scales of this kitchen.
#[component]
pub fn ScalesCard() -> impl IntoView {
    view! {
        <section class="card" aria-label=tr!("Scales")>
            <header>
                <h2>{tr!("Scales")}</h2>
                <span class="quiet">{tr!("smallest step shown")}</span>
            </header>
            <div class="body">
                <ScaleBoxes />
                <KitchenLink />
            </div>
        </section>
    }
}
