//! The conflicts of a plan, with a button for each change that solves them.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::Button;
use crate::app::state::{after_frame, memo};
use crate::engine::plan::{Change, Edit};
use crate::results::day::{ConflictedPlan, late_under_way};
use crate::sheet::Moment;
use crate::sheet::day::Target;
use crate::text::{day as day_text, tr};

/// The conflicts, and the changes that solve them.
#[component]
pub fn Conflicts(
    /// Whether a bake is under way here.
    #[prop(optional)]
    at_bench: bool,
) -> impl IntoView {
    let day = Day::from_context();
    let found = memo(move || {
        let options = day.state.options.get();
        if day.read(|results| results.solved.conflicts.is_empty()) != Some(false) {
            return Default::default();
        }
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let found = day.read(|results| {
            // A step that has begun is never told to begin at another time.
            let bench = day.own_bench.get().filter(|_| at_bench);
            let (plan, solved) = (&results.plan, &results.solved);
            day.zone.with_value(|zone| {
                let conflicts = solved.conflicts.iter();
                let conflicts = conflicts.map(|one| {
                    let begun = bench.as_ref();
                    match begun.and_then(|bench| late_under_way(results, bench, one)) {
                        Some(by) => day_text::ready_later(by, options),
                        None => day_text::conflict(one, plan, &formula, zone, options),
                    }
                });
                conflicts.collect::<Vec<_>>()
            })
        });
        found.unwrap_or_default()
    });
    let conflicted = memo(move || {
        let is_told = found.with(|found| !found.is_empty());
        is_told.then(|| day.read(ConflictedPlan::of).flatten())?
    });
    let solutions = after_frame(conflicted, |asked| Some(asked.solutions()));
    let changes = memo(move || worded(day, &solutions.get().unwrap_or_default()));
    let button = move |(change, wording): (Change, String)| view! { <li><Button label=wording on_tap=move |()| make(day, change) /></li> };
    move || {
        let (conflicts, changes) = (found.get(), changes.get());
        (!conflicts.is_empty()).then(|| {
            let listed = conflicts
                .into_iter()
                .map(|wording| view! { <li>{wording}</li> });
            let solves = (!changes.is_empty()).then(|| {
                view! {
                    <h3>{day_text::what_solves(changes.len())}</h3>
                    <ul class="ways">{changes.into_iter().map(button).collect_view()}</ul>
                }
            });
            view! {
                <div class="advice" role="status">
                    <h3>{tr!("Conflicts")}</h3>
                    <ul>{listed.collect_view()}</ul>
                    {solves}
                </div>
            }
        })
    }
}

/// The changes, each with its words.
fn worded(day: Day, changes: &[Change]) -> Vec<(Change, String)> {
    let options = day.state.options.get();
    let formula = day.state.with(|sheet| sheet.formula.clone());
    let worded = day.read(|results| {
        let in_words =
            |change, zone: &_| day_text::change(change, &results.plan, &formula, zone, options);
        day.zone.with_value(|zone| {
            let changes = changes.iter();
            changes.map(|one| (*one, in_words(one, zone))).collect()
        })
    });
    worded.unwrap_or_default()
}

/// Makes a change: at the bench for this bake alone, else for the plan.
fn make(day: Day, change: Change) {
    match change {
        Change::TableLater(at) | Change::TableEarlier(at) => {
            let table = Target::Table(Moment::from_instant(at));
            day.change_settings(|settings| settings.target = table);
        }
        Change::LetLast { step, minutes, .. } => {
            let at = untrack(|| day.read(|results| results.step(step).map(|(step, _)| step.at)));
            let Some(step) = at.flatten() else {
                return;
            };
            if untrack(|| day.own_bench.with(Option::is_some)) {
                day.change_bench(|bench| bench.let_last(step, minutes));
            } else {
                day.edit(Edit::Duration { step, minutes });
            }
        }
        Change::HelpingHand => day.change_settings(|settings| settings.one_pair_of_hands = false),
    }
}
