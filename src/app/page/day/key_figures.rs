//! The three figures of the place: start, rises, table.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Figure, Shown};
use crate::app::state::memo;
use crate::engine::formula::Formula;
use crate::engine::working::Line;
use crate::results::day::Planned;
use crate::sheet::civil::Zone;
use crate::text::{FormatOptions, day as told, format, tr};

/// The three figures that the place is about.
#[component]
pub fn DayKeys() -> impl IntoView {
    let day = Day::here();
    // The plan of the formula as it is kept, while a trial of it is on.
    let saved = memo(move || {
        let state = day.state;
        let plan = state.is_trial().then(|| day.plan_of(&state.saved()));
        plan.and_then(Result::ok)
    });
    view! {
        <PlanFigure label=tr!("Start") saved look=|planned, zone, _| format::day_and_clock(planned.solved.begins, zone) working=told::way_working />
        <PlanFigure label=tr!("Bulk rise") saved look=|planned, _, options| told::bulk(planned, options) working=|planned, _| told::rises_working(planned) />
        <PlanFigure label=tr!("On the table") saved look=|planned, zone, _| format::day_and_clock(planned.solved.table, zone) working=told::way_working />
    }
}

/// A figure of the plan; with what it was, where a trial changes it.
#[component]
fn PlanFigure(
    /// What it is called.
    label: &'static str,
    /// The plan as it is kept, while a trial is on.
    saved: Memo<Option<Planned>>,
    /// The figure, written out.
    look: fn(&Planned, &Zone, FormatOptions) -> String,
    /// How it came about.
    working: fn(&Planned, &Formula) -> Vec<Line>,
) -> impl IntoView {
    let day = Day::here();
    let written = move |planned: &Planned| {
        let options = day.state.options.get();
        day.zone.with_value(|zone| look(planned, zone, options))
    };
    let shown = memo(move || {
        let value = day.read(written);
        let was = saved.with(|saved| saved.as_ref().map(written));
        Shown::beside(value.unwrap_or_else(|| tr!("none").to_owned()), was)
    });
    let working = move |()| {
        untrack(|| {
            let formula = day.state.sheet().formula;
            day.read(|planned| working(planned, &formula))
                .unwrap_or_default()
        })
    };
    view! { <Figure label=Signal::stored(label.to_owned()) shown working=Callback::new(working) /> }
}
