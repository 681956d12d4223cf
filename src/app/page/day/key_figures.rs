//! The three figures of the place: start, rises, table.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Figure, Shown};
use crate::app::state::memo;
use crate::engine::formula::Formula;
use crate::engine::working::WorkingLine;
use crate::results::day::{DayResults, WhichRise};
use crate::sheet::civil::Zone;
use crate::text::{FormatOptions, day as day_text, format, tr};

/// The three figures that the place is about.
#[component]
pub fn DayKeys() -> impl IntoView {
    let day = Day::from_context();
    // The results of the saved formula, while a trial of it is on.
    let saved = memo(move || {
        let state = day.state;
        let results = state.is_trial().then(|| day.results_of(&state.saved()));
        results.and_then(Result::ok)
    });
    view! {
        <PlanFigure name=tr!("Start") label=|results, zone| day_text::start_label(results, zone) saved select=|results, zone, _| format::clock_at(results.solved.begins, zone) working=day_text::path_working />
        <PlanFigure name=tr!("Bulk rise") label=|_, _| tr!("Bulk rise").to_owned() saved select=|results, _, options| day_text::bulk(results, options) working=|results, _| day_text::rise_working(results, WhichRise::Bulk) />
        <PlanFigure name=tr!("Ready") label=|results, zone| day_text::table_label(results, zone) saved select=|results, zone, _| format::clock_at(results.ready_to_cut(), zone) working=day_text::table_working />
    }
}

/// A figure of the plan; with what it was, where a trial changes it.
#[component]
fn PlanFigure(
    /// Its name where there is no plan.
    name: &'static str,
    /// Its name, with the day where it is a time.
    label: fn(&DayResults, &Zone) -> String,
    /// The results of the saved formula, while a trial is on.
    saved: Memo<Option<DayResults>>,
    /// The figure, written out.
    select: fn(&DayResults, &Zone, FormatOptions) -> String,
    /// Its working.
    working: fn(&DayResults, &Formula) -> Vec<WorkingLine>,
) -> impl IntoView {
    let day = Day::from_context();
    let written = move |results: &DayResults| {
        let options = day.state.options.get();
        day.zone.with_value(|zone| select(results, zone, options))
    };
    let shown = memo(move || {
        let value = day.read(written);
        let was = saved.with(|saved| saved.as_ref().map(written));
        Shown::beside(value.unwrap_or_else(|| "–".to_owned()), was)
    });
    let label = memo(move || {
        day.state.options.track();
        let label = day.read(|results| day.zone.with_value(|zone| label(results, zone)));
        label.unwrap_or_else(|| name.to_owned())
    });
    let working = move |()| {
        untrack(|| {
            let formula = day.state.sheet().formula;
            day.read(|results| working(results, &formula))
                .unwrap_or_default()
        })
    };
    view! { <Figure label shown working=Callback::new(working) /> }
}
