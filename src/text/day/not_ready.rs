//! What a step waits for and is not ready yet, in sentences.

use crate::engine::formula::Formula;
use crate::engine::plan::{Plan, StepAt, StepKind};
use crate::engine::quantity::Instant;
use crate::results::day::NotReady;
use crate::sheet::civil::Zone;
use crate::text::{format, name, tr};

/// In few words, in place of the button that goes on: "Not before 14:05". Of a night in the fridge the
/// heading says until when; its soonest end would be an hour at which nobody is up.
#[must_use]
pub fn not_before(found: &NotReady, now: Instant, zone: &Zone) -> String {
    if matches!(
        found.step.work,
        StepKind::ChillPaste | StepKind::ChillPreferment
    ) {
        return String::new();
    }
    found.until.map_or_else(
        || tr!("The oven is off").to_owned(),
        |until| tr!("Not before {time}", time = time_of_day(until, now, zone)),
    )
}

/// What is not ready, until when, and what a baker must see to go on all the same.
#[must_use]
pub fn not_ready(
    found: &NotReady,
    next: StepAt,
    plan: &Plan,
    formula: &Formula,
    now: Instant,
    zone: &Zone,
) -> String {
    let Some(until) = found.until else {
        return tr!("The oven is not on yet: in a cold oven the bread bakes unevenly.").to_owned();
    };
    let time = time_of_day(until, now, zone);
    let kind = found.step.work;
    if found.step == next {
        return tr!(
            "Switched on at {time}, the oven is hot in time. Sooner, it stands hot for nothing.",
            time = time
        );
    }
    if matches!(
        kind,
        StepKind::Bulk | StepKind::Proof | StepKind::LaterProof
    ) {
        return tr!(
            "It rises until {time} at the soonest. Too short a rise makes small, dense bread: go on only if it looks as it should.",
            time = time
        );
    }
    if matches!(kind, StepKind::Bake | StepKind::LaterBake) {
        return tr!(
            "It bakes until {time} at the soonest. Go on only if it is done: measure the middle.",
            time = time
        );
    }
    if matches!(kind, StepKind::Preheat | StepKind::Refill) {
        return tr!(
            "The oven is hot at {time}. In one that is not, the bread bakes unevenly.",
            time = time
        );
    }
    lasts_until(found.step, plan, formula, &time)
}

/// A step without a sentence of its own.
fn lasts_until(at: StepAt, plan: &Plan, formula: &Formula, time: &str) -> String {
    let step = plan.place(at).and_then(|place| plan.steps().get(place));
    let called = step.map_or_else(
        || name::step_at(at, formula),
        |step| name::step(step, formula),
    );
    tr!(
        "“{step}” lasts until {time} at the soonest.",
        step = called,
        time = time
    )
}

/// The clock; with the day where that is not today.
fn time_of_day(at: Instant, now: Instant, zone: &Zone) -> String {
    if zone.civil(at).date == zone.civil(now).date {
        format::clock_at(at, zone)
    } else {
        format::day_and_clock(at, zone)
    }
}
