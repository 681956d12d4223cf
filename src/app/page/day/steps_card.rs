//! The steps of the plan, day by day, each of which can be opened and changed.

use leptos::prelude::*;

use super::bench_end::finish;
use super::bench_heading::to_its_top;
use super::results::{Day, clock_now};
use super::step_row::StepRow;
use crate::app::browser::random;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::results::day::{begin_bake, learnt_oven};
use crate::sheet::Id;
use crate::text::{day as day_text, tr};

/// The steps, and the way to the bench.
#[component]
pub fn StepsCard() -> impl IntoView {
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

/// A bake of another formula is under way: the way to it, or to its end.
#[component]
fn OtherBake() -> impl IntoView {
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
        <p role="status">{wording}</p>
        <Button label=tr!("Open its formula and go to the bench") on_tap=open />
        <Button label=tr!("Stop that bake, keep it in the log") on_tap=move |()| finish(day) />
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
