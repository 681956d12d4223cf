//! Nights: when the baker sleeps, between two times.

use super::input::DayInput;
use crate::engine::plan::Span;
use crate::engine::quantity::Instant;
use crate::sheet::civil::nights;

/// The nights between two times; none where the baker works through.
pub(super) fn nights_between(input: &DayInput, from: Instant, until: Instant) -> Vec<Span> {
    input.settings.sleep.map_or_else(Vec::new, |sleep| {
        nights(input.zone, (sleep.from, sleep.until), from, until)
    })
}
