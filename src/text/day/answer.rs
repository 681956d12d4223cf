//! Answers: what each row of the place says of itself in one line.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::learn::Learnt;
use crate::engine::numerics::saturating_u32;
use crate::engine::rise::{ReferenceBasis, ReferenceRise, Stated};
use crate::results::day::{DayResults, ReferenceRises, WhichRise, steps_counted};
use crate::sheet::civil::Zone;
use crate::sheet::day::{DaySettings, Log};
use crate::text::{format, format_options::FormatOptions, tr};

use super::learnt::learnt_figures;
use super::log::baked_or_begun;

/// From when to when: "On the table Sat 16:00; start Fri 18:40".
#[must_use]
pub fn when_answer(results: &DayResults, zone: &Zone) -> String {
    tr!(
        "Ready {table}; start {start}",
        table = format::day_and_clock(results.ready_to_cut(), zone),
        start = format::day_and_clock(results.solved.begins, zone)
    )
}

/// Under the clock of the start: "Start Fri".
#[must_use]
pub fn start_label(results: &DayResults, zone: &Zone) -> String {
    tr!(
        "Start {day}",
        day = format::weekday(results.solved.begins, zone)
    )
}

/// Under the clock of the end: "On the table Sat".
#[must_use]
pub fn table_label(results: &DayResults, zone: &Zone) -> String {
    tr!(
        "Ready {day}",
        day = format::weekday(results.ready_to_cut(), zone)
    )
}

/// What the plan's picture is called: over how many days it reaches.
#[must_use]
pub fn days_title(results: &DayResults, zone: &Zone) -> &'static str {
    let [begins, ends] =
        [results.solved.begins, results.ready_to_cut()].map(|at| zone.civil(at).date);
    if begins == ends {
        tr!("One day")
    } else {
        tr!("Two days")
    }
}

/// Fridge and oven: "12 h in the fridge, one oven load"; the oven only where nothing goes into the fridge.
#[must_use]
pub fn fridge_answer(settings: &DaySettings, formula: &Formula, options: FormatOptions) -> String {
    let fridge = format::minutes(settings.rises.fridge, options);
    let made_ahead = [PartKind::Paste, PartKind::Preferment];
    if made_ahead
        .iter()
        .all(|kind| formula.first_part(*kind).is_none())
    {
        return match settings.loads.count.get() {
            1 => tr!("one oven load").to_owned(),
            more => tr!("{loads} oven loads", loads = format::count(more, options)),
        };
    }
    match settings.loads.count.get() {
        1 => tr!(
            "{fridge} in the fridge wished, one oven load",
            fridge = fridge
        ),
        more => tr!(
            "{fridge} in the fridge wished, {loads} oven loads",
            fridge = fridge,
            loads = format::count(more, options)
        ),
    }
}

/// The steps that the bench counts: "19 steps, 1 h 39 min of work".
#[must_use]
pub fn steps_answer(results: &DayResults, options: FormatOptions) -> String {
    tr!(
        "{count} steps, {hands} of work",
        count = format::count(saturating_u32(steps_counted(results)), options),
        hands = format::minutes(results.hands, options)
    )
}

/// Both rises: "bulk 2 h 50 min, proof 2 h 6 min".
#[must_use]
pub fn rise_answer(results: &DayResults, options: FormatOptions) -> String {
    let due = |which| match results.run.rises.of(which) {
        Ok(risen) => format::minutes(risen.due, options),
        Err(_) => tr!("not known").to_owned(),
    };
    tr!(
        "bulk {bulk}, proof {proof}",
        bulk = due(WhichRise::Bulk),
        proof = due(WhichRise::Proof)
    )
}

/// The rises that a day is worked out from: "bulk 60 min at 26 °C, proof 60 min at 28 °C"; by bakes
/// where these have taught another.
#[must_use]
pub fn known_answer(
    settings: &DaySettings,
    references: Option<&ReferenceRises>,
    options: FormatOptions,
) -> String {
    let known = |stated: &Stated, used: Option<&ReferenceRise>| {
        let taught = used.filter(|used| is_taught(used));
        let (time, at) = taught.map_or((stated.time, stated.at), |used| (used.time, used.at));
        let time = format::minutes(time, options);
        let warm = format::temperature(at, options);
        if taught.is_some() {
            tr!("{time} at {warm} by your bakes", time = time, warm = warm)
        } else {
            tr!("{time} at {warm}", time = time, warm = warm)
        }
    };
    let rises = &settings.rises;
    tr!(
        "bulk {bulk}, proof {proof}",
        bulk = known(&rises.bulk, references.map(|known| &known.bulk)),
        proof = known(&rises.proof, references.map(|known| &known.proof))
    )
}

/// That bakes have taught other rises than the formula says; `None` where they have not.
#[must_use]
pub fn taught_rises(references: &ReferenceRises) -> Option<&'static str> {
    let any = is_taught(&references.bulk) || is_taught(&references.proof);
    any.then(|| tr!("Your bakes have taught other times: these are used, not the ones below."))
}

fn is_taught(used: &ReferenceRise) -> bool {
    matches!(used.basis, ReferenceBasis::Bakes(_))
}

/// The log: how many bakes, and when the last one was.
#[must_use]
pub fn log_answer(log: &Log, zone: &Zone, options: FormatOptions) -> String {
    let Some(last) = log.bakes().last() else {
        return tr!("no bake yet").to_owned();
    };
    let date = baked_or_begun(last, &format::date(last.baked().instant(), zone));
    match saturating_u32(log.bakes().len()) {
        1 => tr!("one bake, {date}", date = date),
        more => tr!(
            "{count} bakes, the last {date}",
            count = format::count(more, options),
            date = date
        ),
    }
}

/// What the log has taught: its first figure.
#[must_use]
pub fn learnt_answer(learnt: &Learnt, options: FormatOptions) -> String {
    let figures = learnt_figures(learnt, options);
    let first = figures.first();
    first.map_or_else(String::new, |first| {
        format!("{}: {}", first.name, first.value)
    })
}
