//! The steps of the plan, day by day, each of which can be opened and changed.

use leptos::prelude::*;

use super::results::Day;
use super::step_row::StepRow;
use crate::app::browser::{clock, file};
use crate::app::part::{AnswerRow, Button};
use crate::app::state::memo;
use crate::results::day::{adjustments, learnt_oven};
use crate::storage::calendar;
use crate::text::{chart, day as day_text, share::file_name, tr};

/// The steps.
#[component]
pub fn StepsCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.read(|results| day_text::steps_answer(results, options))
            .unwrap_or_default()
    });
    view! {
        <AnswerRow title=tr!("Steps") answer>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let day = Day::from_context();
    let order = memo(move || {
        day.read(|results| results.order.clone())
            .unwrap_or_default()
    });
    let oven = memo(move || {
        let options = day.state.options.get();
        day.learnt.with(|learnt| {
            let oven = learnt_oven(learnt);
            oven.map(|oven| day_text::oven(oven, options))
                .unwrap_or_default()
        })
    });
    let edited = memo(move || day.settings.with(|settings| !settings.edits.is_empty()));
    let wording = memo(move || {
        let options = day.state.options.get();
        let wording = day.read(|results| {
            day.zone
                .with_value(|zone| chart::day_ribbon(results, zone, options))
        });
        wording.unwrap_or_default()
    });
    view! {
        <p class="body follows" role="status">{wording}</p>
        <Adjusted />
        <p class="body quiet" role="status">{oven}</p>
        <p class="body quiet">{day_text::numbered_steps()}</p>
        <ol class="steps">
            <For each=move || order.get() key=|place| *place let(place)>
                <StepRow place />
            </For>
        </ol>
        <div class="body buttons">
            <Show when=move || edited.get()>
                <Button label=tr!("Back to the usual steps") on_tap=move |()| day.change_settings(|settings| settings.edits.clear()) />
            </Show>
            <Button label=tr!("Save as a calendar file") on_tap=move |()| hand_out(day) />
        </div>
    }
}

/// What the plan makes longer or shorter than wished, and why.
#[component]
fn Adjusted() -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let found = day.with_results(|input, results| {
            let found = adjustments(input, results).into_iter();
            found
                .map(|one| day_text::adjustment(&one, results, &formula, options))
                .collect::<Vec<_>>()
        });
        found.unwrap_or_default()
    });
    view! {
        <ul class="body ways-list follows">
            {move || wording.get().into_iter().map(|wording| view! { <li>{wording}</li> }).collect_view()}
        </ul>
    }
}

/// Saves the plan as a calendar file.
fn hand_out(day: Day) {
    let sheet = day.state.sheet();
    let formula = sheet.formula;
    let id = day.formula_id();
    let id = id.as_ref().map_or("visit", |id| id.as_text());
    let options = day.state.options.get_untracked();
    let events = untrack(|| {
        day.read(|results| {
            day.zone
                .with_value(|zone| day_text::calendar_events(results, &formula, id, zone, options))
        })
    });
    let text = calendar::write(
        &events.unwrap_or_default(),
        day.now.get_untracked().instant(),
    );
    // A browser that refuses says so itself.
    let name = file_name(&sheet.name, &clock::today(), "ics");
    let _saved = file::save(&name, "text/calendar", &text);
}
