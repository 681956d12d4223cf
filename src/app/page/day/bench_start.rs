//! The way to the bench: begins a bake, goes back to it, or to that of another formula.

use leptos::prelude::*;

use super::bake_notice::go_on;
use super::bench_end::finish;
use super::bench_heading::to_its_top;
use super::local_time::clock_now;
use super::results::Day;
use crate::app::browser::random;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::results::day::begin_bake;
use crate::sheet::Id;
use crate::text::{day as day_text, tr};

/// The button to the bench.
#[component]
pub fn BenchStart() -> impl IntoView {
    let day = Day::from_context();
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
            <Button label=tr!("Stop here and save to the log") class="bare" on_tap=move |()| finish(day) />
        </Show>
    }
}

/// A bake of another formula is under way: the way to it, or to its end.
#[component]
fn OtherBake() -> impl IntoView {
    let day = Day::from_context();
    let bake = move || {
        day.bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.clone()))
    };
    let wording = move || bake().map(|bake| day_text::other_bake(&bake.name));
    view! {
        <p role="status">{wording}</p>
        <Button label=tr!("Open its formula and go to the bench") on_tap=move |()| go_on(day) />
        <Button label=tr!("Stop that bake and save it to the log") on_tap=move |()| finish(day) />
    }
}

/// Begins a bake.
fn begin(day: Day) {
    let id = Id::from_random(random::bits());
    let (formula, now) = (day.formula_id(), clock_now());
    let sheet = day.state.sheet();
    let bench = untrack(|| {
        day.results.with(|results| {
            let results = results.as_ref().ok();
            day.with_input(&sheet, |input| begin_bake(id, formula, now, input, results))
        })
    });
    day.bench.set(Some(bench));
    // Saved at once, so that nothing is lost from here on.
    day.change_bench(|_| {});
}
