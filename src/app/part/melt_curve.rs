//! Melt curve: the solid share of the fat at each temperature, and the final temperature of the
//! mix.

use leptos::prelude::*;

use crate::text::chart::{MeltDrawing, Tick};

/// The melt curve, with its text twin.
#[component]
pub fn MeltCurve(
    /// The drawing.
    drawing: MeltDrawing,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    let MeltDrawing {
        line,
        across,
        up,
        melted,
        equilibrium,
        settles_y,
        axis,
    } = drawing;
    let field = format!("0 0 {} {}", MeltDrawing::WIDTH, MeltDrawing::HEIGHT);
    view! {
        <figure class="flow">
            <svg viewBox=field role="img" aria-label=move || description.get()>
                {up.into_iter().map(tick_up).collect_view()}
                {across.into_iter().map(tick_across).collect_view()}
                <text class="unit ends" x=MeltDrawing::RIGHT y="204">{axis}</text>
                <line class="rule" x1=melted.x x2=melted.x y1=MeltDrawing::TOP y2=MeltDrawing::BOTTOM />
                <text class="rule-name" class:ends=melted.ends x=melted.x y="34">{melted.text}</text>
                <path class="curve" d=line />
                <line class="grid" x1=equilibrium.x x2=equilibrium.x y1="18" y2=settles_y />
                <circle class="here" cx=equilibrium.x cy=settles_y r="6" />
                <text class="here-name" class:ends=equilibrium.ends x=equilibrium.x y="16">{equilibrium.text}</text>
            </svg>
        </figure>
    }
}

fn tick_up(tick: Tick) -> impl IntoView {
    view! {
        <line class="grid" x1=MeltDrawing::LEFT x2=MeltDrawing::RIGHT y1=tick.at y2=tick.at />
        <text class="tick ends" x="40" y=tick.at dy="4">{tick.text}</text>
    }
}

fn tick_across(tick: Tick) -> impl IntoView {
    view! { <text class="tick middle" x=tick.at y="186">{tick.text}</text> }
}
