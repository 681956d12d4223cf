//! One step of the bench: its sentence with the figures in it, all of its weights, and what can be
//! noted.

use leptos::prelude::*;

use super::began_box::BeganBox;
use super::bench_heading::STEP_HEADING;
use super::corrections::{Deviations, StepCorrections};
use super::measures::{Measures, MixedFor};
use super::results::Day;
use super::start_early::NotReadyYet;
use super::warmth_boxes::WarmthBoxes;
use super::weigh_rows::WeighRows;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::{BenchStep, DayInput, bench_step};
use crate::text::{
    FormatOptions, caution,
    day::{self as day_text, caution_of},
    name, tr,
};

/// One step, large.
#[component]
pub fn OneStep(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    view! {
        <section class="one-step" aria-label=tr!("This step")>
            <StepName step />
            <Sentence step />
            <NotReadyYet step />
            <WeighRows step />
            <Boxes step />
            <StepCorrections step />
            <details class="fold within otherwise">
                <summary>
                    <span class="title">{tr!("It went differently")}</span>
                </summary>
                <div class="body">
                    <MixedFor step />
                    <BeganBox step />
                    <Deviations step />
                </div>
            </details>
            <Caution step />
        </section>
    }
}

/// The name of a step, as the heading.
#[component]
pub fn StepName(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let called = memo(move || {
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let called =
            day.read(|results| results.find(step).map(|(one, _)| name::step(one, &formula)));
        called.flatten().unwrap_or_default()
    });
    view! { <h2 id=STEP_HEADING tabindex="-1">{called}</h2> }
}

/// A text about a step, which follows what the bench knows.
pub fn step_text(
    step: StepAt,
    write: fn(&BenchStep, &DayInput, FormatOptions) -> Option<String>,
) -> Memo<Option<String>> {
    let day = Day::from_context();
    memo(move || {
        let options = day.state.options.get();
        let written = day.with_results(|input, results| {
            write(&bench_step(input, results, step)?, input, options)
        });
        written.flatten()
    })
}

/// The sentence of a step.
#[component]
pub fn Sentence(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    let sentence = step_text(step, |found, input, options| {
        let formula = &input.sheet.formula;
        Some(day_text::bench_sentence(
            found, formula, input.zone, options,
        ))
    });
    let note = step_text(step, |found, input, options| {
        // What was measured is told in its stead.
        let measured = input.bench.and_then(|bench| bench.bake.noted.dough);
        let predicted = measured.is_none().then_some(found)?;
        day_text::bench_note(predicted, options)
    });
    view! {
        <p class="sentence" id="bench-sentence">{sentence}</p>
        {move || note.get().map(|note| view! { <p class="quiet">{note}</p> })}
    }
}

/// What is measured at a step.
#[component]
pub fn Boxes(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    view! {
        <WarmthBoxes step />
        <Measures step />
    }
}

/// What safety asks for at a step: a line that opens.
#[component]
fn Caution(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let advice = memo(move || {
        let options = day.state.options.get();
        caution_of(step.work).map(|step| caution::safety(step, options))
    });
    move || {
        advice.get().map(|advice| {
            view! {
                <details class="advice caution">
                    <summary>{advice.means.into_owned()}</summary>
                    <p>{advice.to_do.into_owned()}</p>
                    <p class="quiet">{advice.source.into_owned()}</p>
                </details>
            }
        })
    }
}
