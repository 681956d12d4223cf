//! The end of a bake: the bread cools, what is noted of it, and the bake goes into the log.

use leptos::prelude::*;

use super::bench_heading::STEP_HEADING;
use super::bench_wait_view::Asleep;
use super::finished::Finished;
use super::measures::{BreadPhoto, Measures};
use super::results::Day;
use super::{active_bake, bench_copy};
use crate::app::state::memo;
use crate::engine::plan::{StepAt, StepKind};
use crate::results::day::{BenchScreen, finish_bake, note_findings};
use crate::sheet::day::Target;
use crate::storage::key;
use crate::text::{day as day_text, tr};

/// What is measured once the bread is out.
const COOLS: StepAt = StepAt {
    work: StepKind::Cool,
    of: 0,
};

/// All is done but cutting.
#[component]
pub fn EndView(
    /// What the bench shows.
    screen: Memo<BenchScreen>,
) -> impl IntoView {
    let day = Day::from_context();
    let heading = memo(move || match screen.get().idle_until {
        Some(until) => {
            let now = day.now.get();
            day.zone
                .with_value(|zone| day_text::nothing_until(until, now, zone))
        }
        None => tr!("All done").to_owned(),
    });
    view! {
        <section class="one-step waits" aria-label=tr!("This step")>
            <h2 id=STEP_HEADING tabindex="-1">{heading}</h2>
            <p class="sentence">{tr!("Then cut it.")}</p>
            <Asleep screen />
            <Measures step=COOLS />
            <BreadPhoto />
        </section>
    }
}

/// Ends the bake: notes its times, adds it to the log, and plans the next one from now.
pub fn finish(day: Day) {
    // Times are learnt from the plan of the same formula only.
    let own = day.own_bench.with_untracked(Option::is_some);
    let results = day.results.get_untracked().ok().filter(|_| own);
    let settings = day.settings.get_untracked();
    let sheet = day.state.sheet();
    if let Some(mut bench) = day.bench.get_untracked() {
        let dough = untrack(|| {
            day.with_input(&sheet, |input| {
                if own {
                    note_findings(&mut bench, input);
                }
                own.then(|| input.planned_run().dough)
            })
        });
        let planned = bench.planned.clone();
        let bake = finish_bake(bench, results.as_ref(), &settings);
        day.finished.set(own.then(|| Finished {
            planned,
            dough,
            bake: bake.clone(),
        }));
        day.change_log(|log| log.put(bake));
    }
    day.at_bench.set(false);
    day.bench.set(None);
    // The log has it now; no step back at the bench may bring it to both.
    day.state.forget_changes(key::BENCH);
    bench_copy::remove();
    // Nothing is left to be kept.
    let _cleared = active_bake::save(day.state);
    if own && settings.target != Target::Open {
        // The time that was set was that of this bake.
        day.change_settings(|settings| settings.target = Target::Open);
    }
}
