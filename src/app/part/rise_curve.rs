//! Rise curve: how the dough grows here, beside the known rise.

use leptos::prelude::*;

use crate::text::{
    chart::{RiseDrawing, Tick},
    tr,
};

/// The rise curve, with its text twin.
#[component]
pub fn RiseCurve(
    /// The drawing.
    drawing: RiseDrawing,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    let RiseDrawing {
        up,
        across,
        soonest,
        due,
        latest,
        up_at,
        current,
        known,
    } = drawing;
    let field = format!("0 0 {} {}", RiseDrawing::WIDTH, RiseDrawing::HEIGHT);
    let range = format!(
        "M{soonest} {}H{latest}V{}H{soonest}z",
        RiseDrawing::TOP,
        RiseDrawing::BOTTOM
    );
    let left = |tick: Tick| view! { <text class="tick ends" x="34" y=tick.at>{tick.text}</text> };
    let foot =
        |tick: Tick| view! { <text class="tick middle" x=tick.at y="194">{tick.text}</text> };
    view! {
        <figure class="flow rise">
            <svg viewBox=field role="img" aria-label=description>
                <path class="range" d=range />
                <line class="rule" x1=RiseDrawing::LEFT x2=RiseDrawing::RIGHT y1=up_at y2=up_at />
                {up.into_iter().map(left).collect_view()}
                {across.into_iter().map(foot).collect_view()}
                <path class="curve known" d=known />
                <path class="curve" d=current />
                <circle class="here" cx=due cy=up_at r="6" />
            </svg>
            <figcaption class="quiet">
                <span class="key here-key">{tr!("here, today")}</span>
                <span class="key known-key">{tr!("known rise")}</span>
                <span class="key range-key">{tr!("likely range")}</span>
            </figcaption>
        </figure>
    }
}
