//! The plan of a tin from above, drawn.

use leptos::prelude::*;

use crate::text::chart::{PlanCircle, TinPlan};

/// The plan of a tin, with its words.
#[component]
pub fn TinDrawing(
    /// What is drawn.
    plan: TinPlan,
) -> impl IntoView {
    let circles = |all: &[PlanCircle], class: &'static str| {
        let circle =
            |one: &PlanCircle| view! { <circle class=class cx=one.x cy=one.y r=one.radius /> };
        all.iter().map(circle).collect_view()
    };
    let TinPlan {
        wide,
        high,
        rectangle,
        ..
    } = plan;
    view! {
        <figure class="tin-plan">
            <svg viewBox=format!("-2 -2 {} {}", plan.around().0, plan.around().1) aria-hidden="true">
                {rectangle.then(|| view! { <rect class="edge" x="0" y="0" width=wide height=high rx="6" /> })}
                {circles(&plan.edges, "edge")}
                {circles(&plan.risen, "risen")}
                {circles(&plan.put_in, "put-in")}
            </svg>
            <figcaption class="quiet">{plan.says}</figcaption>
        </figure>
    }
}
