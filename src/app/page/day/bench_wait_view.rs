//! The bench while there is nothing to do: until when, what runs meanwhile, what comes next.

use leptos::prelude::*;

use super::began_box::BeganBox;
use super::bench_heading::STEP_HEADING;
use super::bench_step_view::{Boxes, step_text};
use super::corrections::{Deviations, StepCorrections};
use super::results::Day;
use super::start_early::{StartEarly, StartedNow};
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::{BenchScreen, NotReady, before_mixing, is_asleep};
use crate::text::{day as day_text, name, tr};

/// Nothing to do until the next step.
#[component]
pub fn Waiting(
    /// The next step.
    step: StepAt,
    /// What is waited for.
    waits_for: Option<StepAt>,
    /// What the bench shows.
    screen: Memo<BenchScreen>,
    /// What is not ready yet for the next step.
    not_ready: Memo<Option<NotReady>>,
    /// Begins the next step at once.
    #[prop(into)]
    begin: Callback<()>,
) -> impl IntoView {
    let day = Day::from_context();
    let until = memo(move || {
        let until = screen.get().idle_until?;
        let now = day.now.get();
        Some(
            day.zone
                .with_value(|zone| day_text::nothing_until(until, now, zone)),
        )
    });
    let next = memo(move || {
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let called = day.read(|results| {
            let (one, _) = results.find(step)?;
            Some(name::step(one, &formula))
        });
        called.flatten().unwrap_or_default()
    });
    let before = memo(move || {
        let options = day.state.options.get();
        let wording = day.with_results(|input, results| {
            let found = before_mixing(input, results, step)?;
            let formula = &input.sheet.formula;
            Some(day_text::before_mixing(
                &found, formula, input.zone, options,
            ))
        });
        wording.flatten()
    });
    let runs = waits_for.map(|runs| {
        view! {
            <Meanwhile step=runs />
            <StepCorrections step=runs waits=true />
            <details class="fold within otherwise">
                <summary>
                    <span class="title">{tr!("It went differently")}</span>
                </summary>
                <div class="body">
                    <Boxes step=runs />
                    <BeganBox step=runs />
                    <Deviations step=runs />
                </div>
            </details>
        }
    });
    let plain = waits_for
        .is_none()
        .then(|| view! { <StepCorrections step waits=true /> });
    view! {
        <section class="one-step waits" aria-label=tr!("This step")>
            <h2 id=STEP_HEADING tabindex="-1">{until}</h2>
            <p class="sentence" id="bench-sentence">{move || tr!("Then: {step}", step = next.get())}</p>
            {move || before.get().map(|before| view! { <p>{before}</p> })}
            <Asleep screen />
            {runs}
            {plain}
            // A row that was opened stays open while the times follow.
            <Show when=move || not_ready.with(Option::is_some) fallback=move || view! { <StartedNow step /> }>
                <StartEarly step not_ready begin />
            </Show>
        </section>
    }
}

/// What is to be watched while a step runs.
#[component]
fn Meanwhile(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    let sentence = step_text(step, |found, input, options| {
        day_text::bench_meanwhile(found, &input.sheet.formula, input.zone, options)
    });
    view! { <p>{sentence}</p> }
}

/// That the time waited for lies in the night.
#[component]
pub fn Asleep(
    /// What the bench shows.
    screen: Memo<BenchScreen>,
) -> impl IntoView {
    let day = Day::from_context();
    let asleep = memo(move || {
        let until = screen.get().idle_until;
        let asleep = until.and_then(|until| day.read(|results| is_asleep(results, until)));
        asleep.unwrap_or_default()
    });
    move || {
        asleep
            .get()
            .then(|| view! { <p class="advice">{tr!("That is after your bedtime.")}</p> })
    }
}
