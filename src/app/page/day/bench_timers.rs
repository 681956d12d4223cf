//! The running timers of the bench, a line each.

use leptos::prelude::*;

use super::results::Day;
use crate::app::state::memo;
use crate::sheet::day::Timer;
use crate::text::{day as day_text, name, tr};

/// The timers, each with what is left of it.
#[component]
pub fn Timers() -> impl IntoView {
    let day = Day::from_context();
    let timers = memo(move || {
        day.own_bench.with(|bench| {
            let timers = bench.as_ref().map(|bench| bench.timers.clone());
            timers.unwrap_or_default()
        })
    });
    let one = move |timer: Timer| {
        let step = timer.step;
        let called = day.state.with(|sheet| name::step_at(step, &sheet.formula));
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
