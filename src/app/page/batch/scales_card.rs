//! Scales: the steps of the kitchen scale, and of a pocket scale where there is one.

use crate::words::say;
use leptos::prelude::*;

use crate::app::part::{KitchenLink, ScaleBoxes};

/// The scales of this kitchen.
#[component]
pub fn ScalesCard() -> impl IntoView {
    view! {
        <section class="card" aria-label=say!("Scales")>
            <header>
                <h2>{say!("Scales")}</h2>
                <span class="quiet">{say!("smallest step shown")}</span>
            </header>
            <div class="body">
                <ScaleBoxes />
                <KitchenLink />
            </div>
        </section>
    }
}
