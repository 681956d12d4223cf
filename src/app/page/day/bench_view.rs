//! The bench: one step at a time, large enough to be read at arm's length.

use leptos::prelude::*;

use super::active_bake;
use super::began_box::BeganBox;
use super::corrections::StepCorrections;
use super::measures::Measures;
use super::ready_line::ReadyLine;
use super::results::{Day, clock_now};
use super::warmth_boxes::WarmthBoxes;
use super::weigh_rows::WeighRows;
use crate::app::browser::{alarm, focus, wake_lock};
use crate::app::page::HEADING;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::{finish_bake, step_position};
use crate::sheet::Moment;
use crate::sheet::day::Timer;
use crate::storage::key;
use crate::text::{
    caution,
    day::{self as day_text, StepLine, caution_of},
    name, tr,
};

/// The bench.
#[component]
pub fn BenchView() -> impl IntoView {
    let day = Day::from_context();
    wake_lock::request();
    on_cleanup(wake_lock::release);
    let position = memo(move || {
        day.results.with(|results| {
            day.bench
                .with(|bench| step_position(results.as_ref().ok(), bench.as_ref()))
        })
    });
    let at = memo(move || position.get().current);
    let go = move |to: StepAt| {
        day.change_bench(|bench| bench.at = Some(to));
        focus::to_the_top();
        focus::move_to(HEADING);
    };
    let next = move |()| {
        let to = position.get_untracked().next;
        if let (Some(from), Ok(results)) = (at.get_untracked(), day.results.get_untracked()) {
            day.change_bench(|bench| bench.go_on(&results.plan, from, to, clock_now()));
        }
        match to {
            Some(to) => go(to),
            None => finish(day),
        }
    };
    let back = move |()| {
        if let Some(to) = position.get_untracked().previous {
            go(to);
        }
    };
    let is_first = Signal::derive(move || position.get().previous.is_none());
    let is_last = move || position.get().next.is_none();
    let goes_on = Signal::derive(move || {
        if is_last() {
            tr!("Finish, and keep it in the log")
        } else {
            tr!("Done, next")
        }
        .to_owned()
    });
    view! {
        <div class="bench">
            <Timers />
            <ReadyLine />
            {move || at.get().map(|step| view! { <OneStep step /> })}
            <div class="bench-buttons">
                <Button label=tr!("Back") on_tap=back disabled=is_first />
                <Button label=goes_on class="primary" on_tap=next />
            </div>
            <div class="buttons">
                <Button label=tr!("See the plan") class="bare" on_tap=move |()| day.at_bench.set(false) />
                <Button label=tr!("Stop here, keep it in the log") class="bare" on_tap=move |()| finish(day) />
            </div>
        </div>
    }
}

/// One step, large.
#[component]
fn OneStep(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let line = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        day.read(|results| {
            let (one, timed) = results.find(step)?;
            let line = day
                .zone
                .with_value(|zone| day_text::step_line(one, timed, &formula, zone, options));
            Some((line, one.timer(timed.lasts)))
        })
        .flatten()
    });
    let start = move |()| {
        alarm::ask();
        let now = clock_now();
        if let Some((_, lasts)) = line.get_untracked() {
            let ends = Moment::from_instant(now.instant().later(lasts));
            day.change_bench(|bench| {
                bench.bake.begin(step, now);
                bench.set_timer(step, ends);
            });
        }
    };
    let wording = memo(move || {
        let options = day.state.options.get();
        caution_of(step.work).map(|step| caution::safety(step, options).sentence())
    });
    let part = move |pick: fn(StepLine) -> String| {
        move || line.get().map(|(line, _)| pick(line)).unwrap_or_default()
    };
    view! {
        <section class="card one-step" aria-label=tr!("This step")>
            <h2>{part(|line| line.name)}</h2>
            <p class="large">{part(|line| line.clock)}</p>
            <p>{part(|line| line.lasts)}</p>
            <Button label=tr!("Start its timer") class="primary" on_tap=start />
            <WeighRows step />
            <Measures step />
            <WarmthBoxes step />
            <BeganBox step />
            <StepCorrections step />
            <p>{part(|line| line.signs.to_owned())}</p>
            {move || wording.get().map(|wording| view! { <p class="advice">{wording}</p> })}
        </section>
    }
}

/// The timers, each with what is left of it.
#[component]
fn Timers() -> impl IntoView {
    let day = Day::from_context();
    let timers = memo(move || {
        day.bench.with(|bench| {
            bench
                .as_ref()
                .map(|bench| bench.timers.clone())
                .unwrap_or_default()
        })
    });
    let one = move |timer: Timer| {
        let step = timer.step;
        let called = day.state.with(|sheet| name::step_at(step, &sheet.formula));
        let over = timer.clone();
        let current = move || day_text::timer(&timer, day.now.get(), day.state.options.get());
        let is_over = move || over.is_over(day.now.get());
        let stop = move |()| day.change_bench(|bench| bench.stop_timer(step));
        view! {
            <li class:over=is_over>
                <span class="name">{called}</span>
                <span class="large" role="timer">{current}</span>
                <Button label=tr!("Stop") on_tap=stop />
            </li>
        }
    };
    view! {
        <ul class="timers" aria-label=tr!("Timers")>{move || timers.get().into_iter().map(one).collect_view()}</ul>
    }
}

/// Ends the bake: notes its times and adds it to the log.
pub fn finish(day: Day) {
    // Times are learnt from the plan of the same formula only.
    let own = day.own_bench.with_untracked(Option::is_some);
    let results = day.results.get_untracked().ok().filter(|_| own);
    let settings = day.settings.get_untracked();
    if let Some(bench) = day.bench.get_untracked() {
        let bake = finish_bake(bench, results.as_ref(), &settings);
        day.change_log(|log| log.put(bake));
    }
    day.at_bench.set(false);
    day.bench.set(None);
    // The log has the bake now; undoing a step at the bench must not restore it there.
    day.state.forget_changes(key::BENCH);
    // Nothing is left to store.
    let _cleared = active_bake::save(day.state);
}
