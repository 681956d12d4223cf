//! What the plan makes longer or shorter than wished, and a bake that may reach into the night.

use crate::engine::formula::Formula;
use crate::results::day::{Adjustment, AdjustmentReason, Bedtime, DayResults};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// "Paste in the fridge: 11 h 20 min instead of 12 h, so that all of it fits into the time there is."
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
