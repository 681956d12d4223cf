//! Cooling curve: the middle's way down through bench and fridge, under the walls a rule sets.

use leptos::prelude::*;

use crate::text::{
    chart::{CoolingDrawing, Stretch, Tick, Wall},
    tr,
};

/// The cooling curve, with its text twin.
#[component]
pub fn CoolingCurve(
    /// The drawing.
    drawing: CoolingDrawing,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    let CoolingDrawing {
        stretches,
        up,
        across,
        walls,
        middle,
        mean,
    } = drawing;
    let field = format!("0 0 {} {}", CoolingDrawing::WIDTH, CoolingDrawing::HEIGHT);
    view! {
        <figure class="flow cooling">
            <svg viewBox=field role="img" aria-label=move || description.get()>
                {stretches.into_iter().map(stretch).collect_view()}
                {up.into_iter().map(tick_up).collect_view()}
                {across.into_iter().map(tick_across).collect_view()}
                <text class="unit ends" x=CoolingDrawing::RIGHT y="240">{tr!("hours")}</text>
                <path class="mean" d=mean />
                <path class="curve" d=middle />
                {walls.iter().map(wall).collect_view()}
                {walls.iter().map(wall_name).collect_view()}
            </svg>
            <figcaption class="quiet">{tr!("Line: the middle. Dashes: all of it on the mean. Walls: the curve must pass under each.")}</figcaption>
        </figure>
    }
}

fn stretch(stretch: Stretch) -> impl IntoView {
    view! {
        <rect class="band" class:shaded=stretch.shaded x=stretch.x y=CoolingDrawing::TOP width=stretch.width height=CoolingDrawing::DOWN />
        <text class="unit" x=stretch.x y="20">{stretch.text}</text>
    }
}

fn tick_up(tick: Tick) -> impl IntoView {
    view! {
        <line class="grid" x1=CoolingDrawing::LEFT x2=CoolingDrawing::RIGHT y1=tick.at y2=tick.at />
        <text class="tick ends" x="34" y=tick.at dy="4">{tick.text}</text>
    }
}

fn tick_across(tick: Tick) -> impl IntoView {
    view! { <text class="tick middle" x=tick.at y="222">{tick.text}</text> }
}

fn wall(wall: &Wall) -> impl IntoView + use<> {
    view! {
        <line class="wall" class:passes=wall.passes x1=wall.x x2=wall.x y1=CoolingDrawing::TOP y2=wall.foot />
        <circle class="foot" class:passes=wall.passes cx=wall.x cy=wall.foot r="4" />
    }
}

/// The names stand above every line.
fn wall_name(wall: &Wall) -> impl IntoView + use<> {
    view! { <text class="wall-name" class:ends=wall.ends class:passes=wall.passes x=wall.text_x y=wall.text_y>{wall.text.clone()}</text> }
}
