//! The steps of the plan, day by day, each of which can be opened and changed.

use leptos::prelude::*;

use super::bench_end::finish;
use super::bench_heading::to_its_top;
use super::results::{Day, clock_now};
use super::step_row::StepRow;
use crate::app::browser::file;
use crate::app::part::{AnswerRow, Button};
use crate::app::state::memo;
use crate::results::day::{adjustments, learnt_oven};
use crate::storage::calendar;
use crate::text::{chart, day as day_text, tr};

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
    let is_under_way = memo(move || day.own_bench.with(Option::is_some));
    let elsewhere = memo(move || day.bench.with(Option::is_some) && !is_under_way.get());
    let start = move |()| {
        if !is_under_way.get_untracked() {
            begin(day);
        }
        day.finished.set(None);
        day.at_bench.set(true);
        to_its_top();
    };
    view! {
        <section class="card" aria-label=tr!("Steps")>
            <header>
                <h2>{tr!("Steps")}</h2>
            </header>
            <div class="body buttons">
                <Show when=move || elsewhere.get()>
                    <OtherBake />
                </Show>
                <Button
                    disabled=elsewhere
                    label=Signal::derive(move || if is_under_way.get() { tr!("Back to the bench") } else { tr!("Start at the bench") }.to_owned())
                    class="primary"
                    on_tap=start
                />
                <Show when=move || is_under_way.get()>
                    <Button label=tr!("Stop here, keep it in the log") class="bare" on_tap=move |()| finish(day) />
                </Show>
                <Show when=move || edited.get()>
                    <Button label=tr!("The usual steps again") on_tap=move |()| day.change_settings(|settings| settings.edits.clear()) />
                </Show>
            </div>
            <p class="body quiet" role="status">{oven}</p>
            <ol class="steps">
                <For each=move || order.get() key=|place| *place let(place)>
                    <StepRow place />
                </For>
            </ol>
        </section>
    }
}

/// What the plan makes longer or shorter than wished, and why.
#[component]
fn Adjusted() -> impl IntoView {
    let day = Day::from_context();
    let bake = move || {
        day.bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.clone()))
    };
    let wording = move || bake().map(|bake| day_text::other_bake(&bake.name));
    let open = move |()| {
        let of = untrack(bake).and_then(|bake| bake.formula);
        if of.is_some_and(|of| day.state.open_formula(&of)) {
            day.at_bench.set(true);
            to_its_top();
        }
    };
    view! {
        <ul class="body ways-list follows">
            {move || wording.get().into_iter().map(|wording| view! { <li>{wording}</li> }).collect_view()}
        </ul>
    }
}

/// Saves the plan as a calendar file.
fn hand_out(day: Day) {
    let formula = day.state.sheet().formula;
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
    let _saved = file::save("softcrumb-day.ics", "text/calendar", &text);
}
