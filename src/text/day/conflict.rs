//! What is in the way of a plan, and what solves it.

use crate::engine::formula::Formula;
use crate::engine::heat::RuleSet;
use crate::engine::plan::{Change, Conflict, Plan};
use crate::engine::quantity::Minutes;
use crate::results::day::{PasteConflict, PasteCure};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, heat::cooling_way, name, tr};

/// The limits that a plan breaks.
#[must_use]
pub fn conflict(
    conflict: &Conflict,
    plan: &Plan,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let called = |step: usize| called(plan, step, formula);
    let minutes = |time| format::minutes(time, options);
    match conflict {
        Conflict::TooLate { step, by } => tr!(
            "“{first}” would have to begin {second} sooner than it can.",
            first = called(*step),
            second = minutes(*by)
        ),
        Conflict::Waits { step, by } => tr!(
            "After “{first}” the dough would wait {second} too long.",
            first = called(*step),
            second = minutes(*by)
        ),
        Conflict::AtNight {
            step,
            begins,
            wakes,
        } => tr!(
            "“{first}” would begin {second}, while you sleep until {third}.",
            first = called(*step),
            second = format::day_and_clock(*begins, zone),
            third = format::clock_at(*wakes, zone)
        ),
        Conflict::HandsFull { step, other, by } => tr!(
            "“{first}” and “{second}” want the same hands for {third}.",
            first = called(*step),
            second = called(*other),
            third = minutes(*by)
        ),
    }
}

/// That a step under way makes the bread later than it was to be.
#[must_use]
pub fn ready_later(by: Minutes, options: FormatOptions) -> String {
    let late = format::minutes(by, options);
    tr!("The bread will be {late} later than planned.", late = late)
}

/// A paste that cools too slowly for the rules, and how it is cooled.
#[must_use]
pub fn paste_conflict(
    conflict: &PasteConflict,
    rules: RuleSet,
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let part = formula.parts.get(conflict.part);
    let slow = tr!(
        "“{part}” cools too slowly for {whose}, as it is planned:",
        part = part.map_or_else(String::new, |part| name::part(part).to_owned()),
        whose = name::rules_of(rules)
    );
    let way = cooling_way(&conflict.way, conflict.deep, options);
    match conflict.cure {
        Some(PasteCure::Portions(portions)) => {
            let cure = tr!(
                "Cook it in {count} portions, each cooled before the next: each then cools fast enough.",
                count = format::count(portions, options)
            );
            format!("{slow} {way} {cure}")
        }
        Some(PasteCure::Quickest { .. }) => format!("{slow} {way}"),
        None => {
            let cure = tr!("Make less of it at a time: no vessel of a kitchen cools so much.");
            format!("{slow} {way} {cure}")
        }
    }
}

/// What cures it with one tap: the quickest way that passes; `None` where that is more work.
#[must_use]
pub fn paste_cure(conflict: &PasteConflict, options: FormatOptions) -> Option<String> {
    match conflict.cure {
        Some(PasteCure::Quickest { way, deep }) => Some(tr!(
            "Cool it the quickest way that passes: {way}",
            way = cooling_way(&way, deep, options)
        )),
        Some(PasteCure::Portions(_)) | None => None,
    }
}

/// Above so many changes, each of which solves all of it.
#[must_use]
pub fn what_solves(changes: usize) -> &'static str {
    if changes == 1 {
        tr!("This solves it")
    } else {
        tr!("Any one of these solves it")
    }
}

/// What solves all of it, as something to do.
#[must_use]
pub fn change(
    change: &Change,
    plan: &Plan,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    match change {
        Change::TableLater(at) => {
            tr!(
                "Have the bread ready later, {value}.",
                value = format::day_and_clock(*at, zone)
            )
        }
        Change::TableEarlier(at) => tr!(
            "Have the bread ready earlier, {value}.",
            value = format::day_and_clock(*at, zone)
        ),
        Change::LetLast {
            step,
            minutes,
            longer,
        } => tr!(
            "Let “{first}” last {second}, {third} than its limits say.",
            first = called(plan, *step, formula),
            second = format::minutes(*minutes, options),
            third = if *longer { tr!("longer") } else { tr!("less") }
        ),
        Change::HelpingHand => tr!("Have somebody help at that time.").to_owned(),
    }
}

fn called(plan: &Plan, step: usize, formula: &Formula) -> String {
    let step = plan.steps().get(step);
    step.map_or_else(String::new, |step| name::step(step, formula))
}
