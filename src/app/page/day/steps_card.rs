//! The steps of the plan, day by day, each of which can be opened and changed.

use crate::words::say;
use leptos::prelude::*;

use super::answers::{Day, clock_now};
use super::step_row::StepRow;
use crate::app::browser::chance;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::sheet::Id;
use crate::sheet::day::{Bake, Bench};

/// The steps, and the way to the bench.
#[component]
pub fn StepsCard() -> impl IntoView {
    let day = Day::here();
    // By their times: what is begun first stands first.
    let order = memo(move || {
        let order = day.read(|planned| {
            let mut order: Vec<usize> = (0..planned.plan.steps().len()).collect();
            let begins = |place: &usize| planned.solved.steps.get(*place).map(|timed| timed.begins);
            order.sort_by_key(begins);
            order
        });
        order.unwrap_or_default()
    });
    let edited = memo(move || day.wishes.with(|wishes| !wishes.edits.is_empty()));
    let begun = memo(move || day.bench.with(Option::is_some));
    let start = move |()| {
        if !begun.get_untracked() {
            begin(day);
        }
        day.at_bench.set(true);
    };
    view! {
        <section class="card" aria-label=say!("Steps")>
            <header>
                <h2>{say!("Steps")}</h2>
            </header>
            <div class="body buttons">
                <Button
                    says=Signal::derive(move || if begun.get() { say!("Back to the bench") } else { say!("Start at the bench") }.to_owned())
                    class="chief"
                    tapped=start
                />
                <Show when=move || edited.get()>
                    <Button says=say!("The usual steps again") tapped=move |()| day.wish(|wishes| wishes.edits.clear()) />
                </Show>
            </div>
            <ol class="steps">
                <For each=move || order.get() key=|place| *place let(place)>
                    <StepRow place />
                </For>
            </ol>
        </section>
    }
}

/// A bake begins.
fn begin(day: Day) {
    let mut bake = Bake::new(Id::from_random(chance::bits()), clock_now());
    bake.formula = day.formula_id();
    bake.name = day.state.sheet().name;
    let kitchen = day.state.kitchen.get_untracked();
    bake.room = Some(kitchen.room);
    bake.kitchen = kitchen.name;
    day.bench.set(Some(Bench::new(bake)));
    // Kept at once, so that nothing is lost from here on.
    day.change_bench(|_| {});
}
