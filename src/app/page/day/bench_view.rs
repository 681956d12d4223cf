//! The bench: one step fills the screen, or there is nothing to do and the screen says until when.

use leptos::prelude::*;

use super::bench_end::{EndView, finish};
use super::bench_heading::{STEP_HEADING, to_its_top};
use super::bench_step_view::OneStep;
use super::bench_timers::Timers;
use super::bench_wait_view::Waiting;
use super::local_time::clock_now;
use super::results::Day;
use super::start_early::not_ready;
use crate::app::browser::{alarm, screen, speech, wake_lock};
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::numerics::saturating_u32;
use crate::engine::plan::StepAt;
use crate::results::day::{BenchScreen, begin_early, bench_screen, step_done, take_back};
use crate::text::{day as day_text, format, tr};

/// The ids of what is read aloud: name, sentence, weights.
const SPOKEN: &[&str] = &[STEP_HEADING, "bench-sentence", "bench-weights"];

/// What fills the screen.
#[derive(Clone, Copy, PartialEq)]
enum Shown {
    Step(StepAt),
    Wait(StepAt, Option<StepAt>),
    End,
}

impl Shown {
    fn of(screen: BenchScreen) -> Self {
        match (screen.step, screen.idle_until) {
            (Some(step), Some(_)) => Self::Wait(step, screen.waits_for),
            (Some(step), None) => Self::Step(step),
            (None, _) => Self::End,
        }
    }
}

/// The bench.
#[component]
pub fn BenchView() -> impl IntoView {
    let day = Day::from_context();
    wake_lock::request();
    on_cleanup(wake_lock::release);
    screen::give_to_bench(true);
    on_cleanup(|| screen::give_to_bench(false));
    let screen = memo(move || {
        let now = day.now.get();
        day.results.with(|results| {
            day.own_bench
                .with(|bench| bench_screen(results.as_ref().ok(), bench.as_ref(), now))
        })
    });
    let shown = memo(move || Shown::of(screen.get()));
    // Off until it is asked for.
    let reads = RwSignal::new(false);
    let back = move |()| {
        if let Ok(results) = day.results.get_untracked() {
            day.change_bench(|bench| take_back(bench, &results, clock_now()));
        }
    };
    let go_on = move |()| {
        let now = clock_now();
        let results = day.results.get_untracked().ok();
        match (shown.get_untracked(), results) {
            (Shown::Step(step), Some(results)) => {
                alarm::ask();
                day.change_bench(|bench| step_done(bench, &results, step, now));
            }
            (Shown::Wait(step, _), Some(results)) => {
                day.change_bench(|bench| begin_early(bench, &results, step, now));
            }
            (Shown::End, _) => {
                finish(day);
                to_its_top();
            }
            // Without a plan there is no step to be done.
            (Shown::Step(_) | Shown::Wait(..), None) => {}
        }
    };
    Effect::new(move |_| {
        if let Shown::Step(_) = shown.get() {
            day.keep_open();
        }
    });
    // What comes in place of something else is shown from its top, with the focus on it.
    Effect::new(move |before: Option<Shown>| {
        let shown = shown.get();
        if before.is_some_and(|before| before != shown) {
            to_its_top();
            if reads.get_untracked() {
                speech::read(SPOKEN);
            }
        }
        shown
    });
    on_cleanup(speech::hush);
    let is_first = Signal::derive(move || screen.get().previous.is_none());
    let goes_on = Signal::derive(move || {
        match shown.get() {
            Shown::Step(step) => day_text::done(step.work),
            Shown::Wait(..) => tr!("Start it now"),
            Shown::End => tr!("Finish and save to the log"),
        }
        .to_owned()
    });
    let waits = not_ready(day, move || match shown.get() {
        Shown::Wait(step, _) => Some(step),
        Shown::Step(_) | Shown::End => None,
    });
    let not_before = memo(move || {
        let found = waits.get()?;
        let now = day.minute.get();
        Some(
            day.zone
                .with_value(|zone| day_text::not_before(&found, now, zone)),
        )
    });
    let middle = move || match shown.get() {
        Shown::Step(step) => view! { <OneStep step /> }.into_any(),
        Shown::Wait(step, waits_for) => {
            view! { <Waiting step waits_for screen not_ready=waits begin=go_on /> }.into_any()
        }
        Shown::End => view! { <EndView screen /> }.into_any(),
    };
    view! {
        <div class="bench">
            <Top screen reads />
            <Timers screen />
            {middle}
            <div class="bench-buttons">
                <Button label=tr!("Back") on_tap=back disabled=is_first />
                {move || match not_before.get() {
                    Some(not_before) => view! { <p class="not-before">{not_before}</p> }.into_any(),
                    None => view! { <Button label=goes_on class="primary" on_tap=go_on /> }.into_any(),
                }}
            </div>
        </div>
    }
}

/// The way out, the number of the step, the clock.
#[component]
fn Top(
    /// What the bench shows.
    screen: Memo<BenchScreen>,
    /// Whether each step is read aloud.
    reads: RwSignal<bool>,
) -> impl IntoView {
    let day = Day::from_context();
    let aloud = move |_| {
        reads.update(|reads| *reads = !*reads);
        if reads.get_untracked() {
            speech::read(SPOKEN);
        } else {
            speech::hush();
        }
    };
    let leave = move |()| {
        day.at_bench.set(false);
        // Once the bench is gone.
        request_animation_frame(move || day.forget_untouched());
    };
    let number = move || {
        let BenchScreen { number, of, .. } = screen.get();
        let options = day.state.options.get();
        day_text::step_number(saturating_u32(number), saturating_u32(of), options)
    };
    let clock = move || {
        day.zone
            .with_value(|zone| format::clock(zone.civil(day.now.get().instant()).clock))
    };
    view! {
        <div class="bench-top">
            <Button label=tr!("Leave") class="bare" on_tap=leave />
            <span>{number}</span>
            <Show when=speech::is_there>
                <button type="button" class="button bare" aria-pressed=move || reads.get().to_string() on:click=aloud>
                    {tr!("Read aloud")}
                </button>
            </Show>
            <b>{clock}</b>
        </div>
    }
}
