//! At the bench: how the bake deviates from its plan, with a button for each correction.

use leptos::prelude::*;

use super::conflicts::Conflicts;
use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::engine::quantity::Temperature;
use crate::results::day::{
    ReadyTime, StepCorrections as Found, WhichRise, put_rise, step_corrections,
};
use crate::text::{day as day_text, tr};

fn found_at(day: Day, step: StepAt) -> Memo<Found> {
    memo(move || {
        day.with_results(|input, results| step_corrections(input, results, step))
            .unwrap_or_default()
    })
}

/// What has changed for the worse, and what corrects it.
#[component]
pub fn StepCorrections(
    /// At which step.
    step: StepAt,
    /// Whether it says when the bread is ready as the range it is, and also where nothing has moved.
    #[prop(optional)]
    waits: bool,
) -> impl IntoView {
    let day = Day::from_context();
    let found = found_at(day, step);
    let moved = memo(move || {
        let said = day.read(|results| {
            day.zone.with_value(|zone| {
                found.with(|found| match found.ready {
                    Some(ReadyTime::Moved { .. }) if waits => {
                        day_text::ready_moved(found, results, zone)
                    }
                    Some(ReadyTime::Moved { .. }) => day_text::ready_change(found, zone),
                    Some(ReadyTime::OnTime(_)) | None if waits => {
                        day_text::ready_between(results, zone)
                    }
                    Some(ReadyTime::OnTime(_)) | None => None,
                })
            })
        });
        said.flatten()
    });
    let rise = WhichRise::of_step(step.work);
    view! {
        <div class="make-ups">
            {rise.map(|which| view! { <RiseCorrection which found /> })}
            <div role="status">{move || moved.get().map(|wording| view! { <p>{wording}</p> })}</div>
            <Conflicts at_bench=true />
        </div>
    }
}

/// How a step and those after it deviate from the plan the bake began with.
#[component]
pub fn Deviations(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let found = found_at(day, step);
    let wording = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let changes = day.read(|results| {
            found.with(|found| day_text::duration_changes(found, &results.plan, &formula, options))
        });
        let (start, ready) = found.with(|found| {
            day.zone.with_value(|zone| {
                let start = found.start.as_ref();
                let start = start.map(|start| day_text::start_deviation(start, zone, options));
                let on_time = matches!(found.ready, Some(ReadyTime::OnTime(_)));
                let ready = on_time.then(|| day_text::ready_change(found, zone));
                (start, ready.flatten())
            })
        });
        let changes = changes.unwrap_or_default();
        start
            .into_iter()
            .chain(changes)
            .chain(ready)
            .collect::<Vec<_>>()
    });
    view! {
        <div class="make-ups">
            {move || wording.get().into_iter().map(|wording| view! { <p>{wording}</p> }).collect_view()}
        </div>
    }
}

/// How a rise deviates, and a place that corrects it.
#[component]
fn RiseCorrection(
    /// Which rise.
    which: WhichRise,
    /// How the bake deviates.
    found: Memo<Found>,
) -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        found.with(|found| day_text::rise_deviation(found, options))
    });
    let place = memo(move || {
        let options = day.state.options.get();
        let rise = found.with(|found| found.rise)?;
        let place = rise.place?;
        Some((place.at, day_text::rise_place(&place, rise.now, options)))
    });
    let put = move |at: Option<Temperature>| {
        let sheet = day.state.sheet();
        untrack(|| {
            day.with_input(&sheet, |input| {
                day.change_bench(|bench| put_rise(bench, input, which, at));
            });
        });
    };
    let is_put = memo(move || {
        let rise = found.with(|found| found.rise);
        rise.is_some_and(|rise| rise.chosen.is_some())
    });
    view! {
        <div role="status">
            {move || wording.get().into_iter().map(|wording| view! { <p>{wording}</p> }).collect_view()}
        </div>
        <div class="buttons">
            {move || place.get().map(|(at, wording)| view! { <Button label=wording on_tap=move |()| put(Some(at)) /> })}
            <Show when=move || is_put.get()>
                <Button label=tr!("Leave it where it usually stands") on_tap=move |()| put(None) />
            </Show>
        </div>
    }
}
