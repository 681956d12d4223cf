//! The running timers of the bench, a line each.

use leptos::prelude::*;

use super::results::Day;
use crate::app::state::memo;
use crate::results::day::{BenchScreen, timers_beside};
use crate::sheet::day::Timer;
use crate::text::{day as day_text, name, tr};

/// The timers, each with what is left of it.
#[component]
pub fn Timers(
    /// What the bench shows.
    screen: Memo<BenchScreen>,
) -> impl IntoView {
    let day = Day::from_context();
    // What the step on the screen waited for is over, and needs no line.
    let timers = memo(move || {
        let (screen, now) = (screen.get(), day.now.get());
        let timers = day.read(|results| {
            let bench = day.own_bench.get();
            bench.map(|bench| timers_beside(&bench, results, &screen, now))
        });
        timers.flatten().unwrap_or_default()
    });
    let one = move |timer: Timer| {
        let step = timer.step;
        let called = day.state.with(|sheet| {
            let heat = day.read(|results| results.find(step).and_then(|(one, _)| one.heat));
            name::step_with_heat(step, heat.flatten(), &sheet.formula)
        });
        let over = timer.clone();
        let current = move || day_text::timer(&timer, day.now.get(), day.state.options.get());
        let is_over = move || over.is_over(day.now.get());
        view! {
            <li class:over=is_over>
                <span class="name">{called}</span>
                " "
                <b role="timer">{current}</b>
            </li>
        }
    };
    view! {
        <ul class="timers" aria-label=tr!("Timers")>{move || timers.get().into_iter().map(one).collect_view()}</ul>
    }
}
