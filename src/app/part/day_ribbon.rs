//! Day ribbon: two days as one strip.

use leptos::prelude::*;

use crate::text::{
    chart::{DayRibbon, Lane, RibbonBlock, Tick},
    tr,
};

/// The ribbon, with its text twin.
#[component]
pub fn DayRibbonPicture(
    /// The drawing.
    drawing: DayRibbon,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    let (hours_y, shortened_y) = (drawing.hours_y(), drawing.shortened_y());
    let (lanes_foot, shade) = (drawing.lanes_foot(), drawing.shade());
    let DayRibbon {
        height,
        lanes,
        blocks,
        nights,
        shortened,
        hours,
        days,
        now,
    } = drawing;
    let field = format!("0 0 {} {height}", DayRibbon::WIDTH);
    let night = move |(x, width): (f64, f64)| {
        view! { <rect class="night" x=x y=DayRibbon::TOP width=width height=shade /> }
    };
    let hour = move |tick: Tick| view! { <text class="tick middle" x=tick.at y=hours_y>{tick.text}</text> };
    let below = move |tick: Tick| view! { <text class="tick middle" x=tick.at y=shortened_y>{tick.text}</text> };
    let midnight = move |tick: Tick| {
        view! {
            <line class="midnight" x1=tick.at x2=tick.at y1="0" y2=lanes_foot />
            <text class="day" x=tick.at y="13" dx="4">{tick.text}</text>
        }
    };
    let now = now.map(|x| view! { <line class="now" x1=x x2=x y1="0" y2=lanes_foot /> });
    view! {
        <figure class="ribbon" role="group" aria-label=tr!("Chart of the plan")>
            <svg viewBox=field role="img" aria-label=description>
                {nights.into_iter().map(night).collect_view()}
                {days.into_iter().map(midnight).collect_view()}
                {blocks.into_iter().map(block).collect_view()}
                {now}
                {lanes.into_iter().map(lane).collect_view()}
                {hours.into_iter().map(hour).collect_view()}
                {shortened.into_iter().map(below).collect_view()}
            </svg>
        </figure>
    }
}

fn lane(lane: Lane) -> impl IntoView {
    view! { <text class="lane" x="2" y=lane.y dy="11">{lane.name}</text> }
}

fn block(block: RibbonBlock) -> impl IntoView {
    view! {
        <g>
            <title>{block.name}</title>
            <rect class="waits" x=block.x y=block.y width=block.width height=DayRibbon::BLOCK rx="3" />
            <rect class="works" x=block.x y=block.y width=block.work height=DayRibbon::BLOCK rx="1" />
        </g>
    }
}
