//! What the plan makes longer or shorter than wished, and a bake that may reach into the night.

use crate::engine::formula::Formula;
use crate::results::day::{Adjustment, AdjustmentReason, Bedtime, DayResults};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// "Cool: 1 h 20 min instead of 1 h 56 min, so that all of it fits into the time there is."
#[must_use]
pub fn adjustment(
    adjustment: &Adjustment,
    results: &DayResults,
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let step = results.step(adjustment.step);
    let step = step.map_or_else(String::new, |(step, _)| name::step(step, formula));
    let minutes = |time| format::minutes(time, options);
    let (lasts, wished) = (minutes(adjustment.lasts), minutes(adjustment.wished));
    match adjustment.reason {
        AdjustmentReason::Hands => tr!(
            "{step}: {lasts} instead of {wished}, so that no two steps need your hands at once.",
            step = step,
            lasts = lasts,
            wished = wished
        ),
        AdjustmentReason::Sleep => tr!(
            "{step}: {lasts} instead of {wished}, so that no work falls into the night.",
            step = step,
            lasts = lasts,
            wished = wished
        ),
        AdjustmentReason::Time => tr!(
            "{step}: {lasts} instead of {wished}, so that all of it fits into the time there is.",
            step = step,
            lasts = lasts,
            wished = wished
        ),
    }
}

/// A loaf that the plan gives less time to cool than it takes: "The bread cools 1 h 20 min instead
/// of 1 h 56 min, to be on the table in time: it cuts less well."
#[must_use]
pub fn cut_early(results: &DayResults, options: FormatOptions) -> Option<String> {
    let (lasts, wished) = results.cut_early()?;
    Some(tr!(
        "The bread cools {lasts} instead of {wished}, to be on the table in time: it cuts less well.",
        lasts = format::minutes(lasts, options),
        wished = format::minutes(wished, options)
    ))
}

/// "Bread may still be in the oven at bedtime, Fri 23:00: it comes out at 22:40, at the latest at 23:50."
#[must_use]
pub fn bedtime(bedtime: &Bedtime, zone: &Zone) -> String {
    tr!(
        "Bread may still be in the oven at bedtime, {sleeps}: it comes out at {out}, at the latest at {latest}.",
        sleeps = format::day_and_clock(bedtime.sleeps, zone),
        out = format::clock_at(bedtime.out, zone),
        latest = format::clock_at(bedtime.out_at_latest, zone)
    )
}
