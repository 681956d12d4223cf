//! The three figures of the place: start, rises, table.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Figure, Shown};
use crate::app::state::memo;
use crate::engine::formula::Formula;
use crate::engine::working::Line;
use crate::sheet::civil::Zone;
use crate::sheet::day::Planned;
use crate::text::{FormatOptions, day as told, tr, format};

/// The three figures that the place is about.
#[component]
pub fn DayKeys() -> impl IntoView {
    let day = Day::here();
    // The plan of the formula as it is kept, while a trial of it is on.
    let kept = memo(move || {
        let state = day.state;
        let plan = state.is_trial().then(|| day.plan_of(&state.kept()));
        plan.and_then(Result::ok)
    });
    view! {
        <PlanFigure label=tr!("Start") kept look=|planned, zone, _| format::day_and_clock(planned.solved.begins, zone) working=told::way_working />
        <PlanFigure label=tr!("Bulk rise") kept look=|planned, _, manner| told::bulk(planned, manner) working=|planned, _| told::rises_working(planned) />
        <PlanFigure label=tr!("On the table") kept look=|planned, zone, _| format::day_and_clock(planned.solved.table, zone) working=told::way_working />
    }
}

/// A figure of the plan; with what it was, where a trial changes it.
#[component]
fn PlanFigure(
    /// What it is called.
    label: &'static str,
    /// The plan as it is kept, while a trial is on.
    kept: Memo<Option<Planned>>,
    /// The figure, written out.
    look: fn(&Planned, &Zone, FormatOptions) -> String,
    /// How it came about.
    working: fn(&Planned, &Formula) -> Vec<Line>,
) -> impl IntoView {
    let day = Day::here();
    let written = move |planned: &Planned| {
        let manner = day.state.manner.get();
        day.zone.with_value(|zone| look(planned, zone, manner))
    };
    let shown = memo(move || {
        let value = day.read(written);
        let was = kept.with(|kept| kept.as_ref().map(written));
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
