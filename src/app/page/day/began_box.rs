//! When a step really began, where that was noted late.

use leptos::prelude::*;

use super::local_time::clock_now;
use super::results::Day;
use crate::app::part::ClockBox;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::last_time;
use crate::sheet::Moment;
use crate::text::{format, read, tr};

/// The box of the time a step began.
#[component]
pub fn BeganBox(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let began = memo(move || {
        let began = day.own_bench.with(|bench| bench.as_ref()?.bake.began(step));
        let shown = began.map(|began| {
            day.zone
                .with_value(|zone| format::box_clock(zone.civil(began.instant()).clock))
        });
        shown.unwrap_or_default()
    });
    let typed = move |text: String| {
        let Some(clock) = read::clock(&text) else {
            return;
        };
        let now = clock_now();
        let at = day
            .zone
            .with_value(|zone| last_time(clock, now.instant(), zone));
        day.change_bench(|bench| {
            bench.bake.begin(step, now);
            bench.began_at(step, Moment::from_instant(at));
        });
    };
    view! { <ClockBox id="step-began" label=tr!("Started at") figure=began store=typed /> }
}
