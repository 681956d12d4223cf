//! How a bake deviates from its plan, and what corrects it, in sentences.

use super::bench::dough_deviation;
use super::rise::rise_takes;
use crate::engine::formula::Formula;
use crate::engine::plan::Plan;
use crate::engine::quantity::Minutes;
use crate::results::day::{
    DurationChange, FoundWarmth, FreshPaste, PartWarmth, ReadyTime, RiseDeviation, RisePlace,
    StartDeviation, StepCorrections,
};
use crate::sheet::civil::Zone;
use crate::text::error::ErrorText;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// How much later or earlier a step starts than planned.
#[must_use]
pub fn start_deviation(start: &StartDeviation, zone: &Zone, options: FormatOptions) -> String {
    let then = format::clock_at(start.planned, zone);
    let by = format::minutes(start.by, options);
    if start.late {
        tr!(
            "This was to begin at {then}: it is {late} late.",
            then = then,
            late = by
        )
    } else {
        tr!(
            "This was to begin at {then}: it is {soon} early.",
            then = then,
            soon = by
        )
    }
}

/// The steps that last longer or shorter than as the bake began, a sentence each.
#[must_use]
pub fn duration_changes(
    corrections: &StepCorrections,
    plan: &Plan,
    formula: &Formula,
    options: FormatOptions,
) -> Vec<String> {
    let durations = corrections.durations.iter();
    durations
        .map(|change| duration_change(change, plan, formula, options))
        .collect()
}

/// What becomes of the time the bread is ready; `None` where nothing has changed.
#[must_use]
pub fn ready_change(corrections: &StepCorrections, zone: &Zone) -> Option<String> {
    let time = |at| format::day_and_clock(at, zone);
    corrections.ready.map(|ready| match ready {
        ReadyTime::Moved { planned, now } => tr!(
            "The bread can be cut {now} instead of {then}.",
            now = time(now),
            then = time(planned)
        ),
        ReadyTime::OnTime(planned) => tr!(
            "The bread can be cut {then}, as planned.",
            then = time(planned)
        ),
    })
}

pub(super) fn duration_change(
    change: &DurationChange,
    plan: &Plan,
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let step = plan.place(change.step);
    let step = step.and_then(|place| plan.steps().get(place));
    let called = step.map_or_else(
        || name::step_at(change.step, formula),
        |step| name::step(step, formula),
    );
    let (now, was) = (
        format::minutes(change.now, options),
        format::minutes(change.planned, options),
    );
    if change.fills_time {
        tr!(
            "“{called}” lasts {now} instead of {was}, so that the bread is ready on time.",
            called = called,
            now = now,
            was = was
        )
    } else {
        tr!(
            "“{called}” lasts {now} instead of {was}.",
            called = called,
            now = now,
            was = was
        )
    }
}

/// What deviates about a rise: the dough's temperature, its duration, its start.
#[must_use]
pub fn rise_deviation(corrections: &StepCorrections, options: FormatOptions) -> Vec<String> {
    let dough = corrections.dough;
    let mut wording: Vec<String> = dough
        .map(|(wished, measured)| dough_deviation(wished, measured, options))
        .into_iter()
        .collect();
    let Some(rise) = corrections.rise else {
        return wording;
    };
    wording.extend(rise_duration(&rise, options));
    if rise.late > Minutes::ZERO {
        let late = format::whole_minutes(rise.late, options);
        wording.push(tr!("It is {late} behind the plan.", late = late));
    }
    if let Some(place) = rise.chosen {
        let place = format::temperature(place, options);
        wording.push(tr!("It is put where it is {place}.", place = place));
    }
    wording
}

/// "The proof takes 50 min instead of 60 min."; `None` where both read the same.
fn rise_duration(rise: &RiseDeviation, options: FormatOptions) -> Option<String> {
    let same = format::minutes(rise.now, options) == format::minutes(rise.planned, options);
    (!same).then(|| rise_takes(rise.which, rise.now, rise.planned, options))
}

/// A button for the place that brings a rise back on time.
#[must_use]
pub fn rise_place(place: &RisePlace, now: Minutes, options: FormatOptions) -> String {
    let (at, due) = (
        format::temperature(place.at, options),
        format::minutes(place.due, options),
    );
    if place.due < now {
        tr!(
            "Put it in a warmer place, {at}: up in {due}",
            at = at,
            due = due
        )
    } else {
        tr!(
            "Put it in a cooler place, {at}: up in {due}",
            at = at,
            due = due
        )
    }
}

/// What a measured paste or preferment still needs, or why that cannot be worked out.
#[must_use]
pub fn part_warmth(called: &str, warmth: &PartWarmth, options: FormatOptions) -> String {
    let needs = match &warmth.needs {
        Ok(needs) => needs,
        Err(error) => return error.sentence(options),
    };
    let (at, wanted) = (
        format::temperature(warmth.measured, options),
        format::temperature(needs.wanted, options),
    );
    let Some(wait) = warmth.wait else {
        return tr!(
            "{called} is at {at}, and {wanted} is enough: it can go on.",
            called = called,
            at = at,
            wanted = wanted
        );
    };
    tr!(
        "{called} is at {at}; the plan has it at {wanted} by now. It needs about {there} more.",
        called = called,
        at = at,
        wanted = wanted,
        there = format::minutes(wait, options)
    )
}

/// What was measured at a step says: whether a paste is hot enough, or how long something still needs.
#[must_use]
pub fn found_warmth(called: &str, found: &FoundWarmth, options: FormatOptions) -> String {
    match found {
        FoundWarmth::Fresh(fresh) => fresh_paste(called, fresh, options),
        FoundWarmth::Needs(warmth) => part_warmth(called, warmth, options),
        FoundWarmth::GoesIn(at) => tr!(
            "{called} is at {at}. It goes on cooling in the fridge.",
            called = called,
            at = format::temperature(*at, options)
        ),
    }
}

fn fresh_paste(called: &str, fresh: &FreshPaste, options: FormatOptions) -> String {
    let at = format::temperature(fresh.measured, options);
    if fresh.is_short() {
        tr!(
            "{called} is at {at}; its starch cooks at {range}. Put it on low heat and stir until it is at {goal}.",
            called = called,
            at = at,
            range = format::temperature_range(fresh.begins, fresh.goal, options),
            goal = format::temperature(fresh.goal, options)
        )
    } else {
        tr!(
            "{called} is at {at}: hot enough, all of its starch cooks.",
            called = called,
            at = at
        )
    }
}

/// A button for waiting.
#[must_use]
pub fn wait_for(minutes: Minutes, options: FormatOptions) -> String {
    let minutes = format::minutes(minutes, options);
    tr!("Wait {minutes} more", minutes = minutes)
}

/// A button for ice water instead.
#[must_use]
pub fn ice_for(minutes: Minutes, options: FormatOptions) -> String {
    let minutes = format::minutes(minutes, options);
    tr!("Stand it in ice water for {minutes}", minutes = minutes)
}
