//! A temperature beside the one before a trial.

use crate::engine::quantity::Temperature;
use crate::text::{format, format_options::FormatOptions};

/// The temperature before, and the change since.
#[must_use]
pub fn before_and_change(
    before: Temperature,
    now: Temperature,
    options: FormatOptions,
) -> (String, String) {
    (
        format::temperature(before, options),
        format::temperature_change(now - before, options),
    )
}

/// The predicted temperature of a dough before a change, and the change.
#[must_use]
pub fn dough_before_and_change(
    before: Temperature,
    now: Temperature,
    options: FormatOptions,
) -> (String, String) {
    let (_, change) = before_and_change(before, now, options);
    (format::near_temperature(before, options), change)
}
