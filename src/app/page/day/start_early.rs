//! What a step waits for and is not ready yet, and the way to go on all the same.

use std::time::Duration;

use leptos::html::Details;
use leptos::prelude::*;

use super::results::Day;
use crate::app::browser::focus;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::{self, NotReady, start_now};
use crate::text::{day as day_text, tr};

/// What a step waits for and is not ready yet.
pub fn not_ready(
    day: Day,
    step: impl Fn() -> Option<StepAt> + Send + Sync + 'static,
) -> Memo<Option<NotReady>> {
    memo(move || {
        let (step, now) = (step()?, day.now.get());
        let found = day.read(|results| {
            day.own_bench
                .with(|bench| day::not_ready(Some(results), bench.as_ref(), step, now))
        });
        found.flatten()
    })
}

/// That a step is on the screen before what it waits for is ready.
#[component]
pub fn NotReadyYet(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let found = not_ready(day, move || Some(step));
    move || {
        found
            .get()
            .map(|found| view! { <p class="advice">{sentence(day, &found, step)}</p> })
    }
}

fn sentence(day: Day, found: &NotReady, next: StepAt) -> Option<String> {
    let now = day.minute.get();
    let formula = day.state.with(|sheet| sheet.formula.clone());
    day.read(|results| {
        day.zone
            .with_value(|zone| day_text::not_ready(found, next, &results.plan, &formula, now, zone))
    })
}

/// A row that opens to what is against beginning at once, what becomes of the bread then, and the
/// button for it.
#[component]
pub fn StartEarly(
    /// The next step.
    step: StepAt,
    /// What is not ready yet.
    not_ready: Memo<Option<NotReady>>,
    /// Begins it.
    #[prop(into)]
    begin: Callback<()>,
) -> impl IntoView {
    let day = Day::from_context();
    let is_open = RwSignal::new(false);
    let fold = NodeRef::<Details>::new();
    let toggle = move |_| {
        is_open.update(|open| *open = !*open);
        // Not before what starting now does has been worked out.
        set_timeout(move || focus::show_whole(fold), ONCE_TOLD);
    };
    view! {
        <details class="fold within otherwise" node_ref=fold on:toggle=toggle>
            <summary>
                <span class="title">{tr!("Start it sooner")}</span>
            </summary>
            <Show when=move || is_open.get()>
                <div class="body">
                    <p class="advice">{move || sentence(day, &not_ready.get()?, step)}</p>
                    <StartedNow step />
                    <div class="buttons">
                        <Button label=tr!("Start it early") on_tap=begin />
                    </div>
                </div>
            </Show>
        </details>
    }
}

/// So long after the frame it is worked out what starting now does: it takes a plan of its own.
const AFTER_FRAME: Duration = Duration::from_millis(40);
/// By then it has been worked out and is told.
const ONCE_TOLD: Duration = Duration::from_millis(80);

/// What becomes of the bread when the next step is started now.
#[component]
pub fn StartedNow(
    /// The next step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let wording = RwSignal::new(None::<String>);
    Effect::new(move |_| {
        day.results.track();
        day.state.options.track();
        let work = move || {
            let found = untrack(|| {
                let options = day.state.options.get();
                day.with_results(|input, results| {
                    let then = start_now(input, results, step)?;
                    let (plan, formula) = (&results.plan, &input.sheet.formula);
                    Some(day_text::start_now(
                        &then, plan, formula, input.zone, options,
                    ))
                })
            });
            // The baker may have gone on.
            drop(wording.try_set(found.flatten()));
        };
        set_timeout(work, AFTER_FRAME);
    });
    view! { <p class="started-now">{wording}</p> }
}
