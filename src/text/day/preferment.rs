//! The ripeness of a preferment, by the clock of its plan.

use crate::engine::formula::Formula;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Factor, Instant, Minutes};
use crate::engine::rise::RipenessState;
use crate::engine::working::WorkingLine;
use crate::results::day::{DayResults, PrefermentConflict, PrefermentRise};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, tr};

/// Whether a preferment is ripe when it leaves the fridge, and until when it keeps: "Night dough is
/// ripe when it leaves the fridge, Sat 7:31. It keeps until Mon 7:31."
#[must_use]
pub fn preferment_rise(
    rise: &PrefermentRise,
    results: &DayResults,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let name = formula.parts.get(rise.part);
    let name = name.map_or_else(String::new, |own| own.name.clone());
    let mixed = mixed(rise, results);
    let after = |minutes: Minutes| {
        mixed.map_or_else(
            || {
                tr!(
                    "{time} after mixing",
                    time = format::minutes(minutes, options)
                )
            },
            |mixed| format::day_and_clock(mixed.later(minutes), zone),
        )
    };
    let out = after(rise.in_all());
    let Ok(ripeness) = &rise.ripeness else {
        return String::new();
    };
    if ripeness.state == RipenessState::Under {
        return under(&name, &out, ripeness.ripe_from.map(after));
    }
    let is_ripe = ripeness.state == RipenessState::Ripe;
    ripe_or_over(&name, &out, (is_ripe, ripeness.ripe_until.map(after)))
}

/// A preferment that is ripe, or over; until when it keeps or was ripe, where that is known.
fn ripe_or_over(name: &str, out: &str, ripe: (bool, Option<String>)) -> String {
    match ripe {
        (true, Some(until)) => tr!(
            "{name} is ripe when it leaves the fridge, {out}. It keeps there until {until}.",
            name = name,
            out = out,
            until = until
        ),
        (true, None) => tr!(
            "{name} is ripe when it leaves the fridge, {out}. It keeps there for two more days.",
            name = name,
            out = out
        ),
        (false, Some(until)) => tr!(
            "{name} is past its best when it leaves the fridge, {out}: it was ripe until {until}.",
            name = name,
            out = out,
            until = until
        ),
        (false, None) => tr!(
            "{name} is past its best when it leaves the fridge, {out}.",
            name = name,
            out = out
        ),
    }
}

/// A preferment that is not ripe; from when it would be, where that is known.
fn under(name: &str, out: &str, from: Option<String>) -> String {
    match from {
        Some(from) => tr!(
            "{name} is not ripe yet when it leaves the fridge, {out}; left there, it would be ripe {from}.",
            name = name,
            out = out,
            from = from
        ),
        None => tr!(
            "{name} is not ripe when it leaves the fridge, {out}, nor two days later: give it more \
             yeast, or more time in the room.",
            name = name,
            out = out
        ),
    }
}

/// When a preferment is mixed by the plan: when it begins to stand.
fn mixed(rise: &PrefermentRise, results: &DayResults) -> Option<Instant> {
    let of = u16::try_from(rise.part).ok()?;
    let at = |work| StepAt { work, of };
    let stands = results.find(at(StepKind::StandPreferment));
    if let Some((_, timed)) = stands {
        return Some(timed.begins);
    }
    let (_, chilled) = results.find(at(StepKind::ChillPreferment))?;
    Some(chilled.ends.earlier(rise.in_all()))
}

/// How ripe the preferments are, and how that comes about.
#[must_use]
pub fn preferment_working(results: &DayResults) -> Vec<WorkingLine> {
    let rises = results.run.rises.preferments.iter().flatten();
    rises.flat_map(PrefermentRise::working).collect()
}

/// A preferment that is not ripe in time, and what makes it ripe.
#[must_use]
pub fn preferment_conflict(
    conflict: &PrefermentConflict,
    results: &DayResults,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let mut rises = results.run.rises.preferments.iter().flatten();
    let rise = rises.find(|rise| rise.part == conflict.part);
    let said = rise.map(|rise| preferment_rise(rise, results, formula, zone, options));
    let said = said.unwrap_or_default();
    let times = |yeast: Factor| format::plain(yeast.number(), 1, options.numbers);
    let cure = match (conflict.stand, conflict.yeast) {
        (Some(stand), Some(yeast)) => tr!(
            "Let it stand in the room for {stand} before the fridge, or give it {times} times its yeast.",
            stand = format::minutes(stand, options),
            times = times(yeast)
        ),
        (Some(stand), None) => tr!(
            "Let it stand in the room for {stand} before the fridge.",
            stand = format::minutes(stand, options)
        ),
        (None, Some(yeast)) => tr!("Give it {times} times its yeast.", times = times(yeast)),
        (None, None) => return said,
    };
    format!("{said} {cure}")
}

/// What makes it ripe with one tap: a longer stand in the room; `None` where that is not enough.
#[must_use]
pub fn preferment_cure(conflict: &PrefermentConflict, options: FormatOptions) -> Option<String> {
    let stand = conflict.stand?;
    Some(tr!(
        "Let it stand in the room for {stand}",
        stand = format::minutes(stand, options)
    ))
}
