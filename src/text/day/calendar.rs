//! The steps of a plan as entries of a calendar.

use super::ready::ready;
use super::rise::signs;
use crate::engine::formula::Formula;
use crate::results::day::DayResults;
use crate::sheet::civil::Zone;
use crate::storage::calendar::Event;
use crate::text::{format_options::FormatOptions, name};

/// An entry for each step; steps that need hands are announced, and the last says between when the
/// bread is ready.
///
/// `id` keeps the entries of one formula apart from those of others.
#[must_use]
pub fn calendar_events(
    results: &DayResults,
    formula: &Formula,
    id: &str,
    zone: &Zone,
    options: FormatOptions,
) -> Vec<Event> {
    let last = results.order.iter().copied();
    let last = last.max_by_key(|place| results.step(*place).map(|(_, timed)| timed.ends));
    let describe = |place: usize, work| {
        let range = ready(results, zone, options).filter(|_| last == Some(place));
        let said = [signs(work).to_owned(), range.unwrap_or_default()];
        let said = said.into_iter().filter(|said| !said.is_empty());
        said.collect::<Vec<_>>().join(" ")
    };
    let steps = results.steps().enumerate();
    let events = steps.map(|(place, (step, timed))| Event {
        uid: format!("{id}-{place}-{}@softcrumb", timed.begins.seconds()),
        begins: timed.begins,
        ends: timed.ends,
        summary: name::step(step, formula),
        description: describe(place, step.at.work),
        announced: timed.hands_until > timed.begins,
    });
    events.collect()
}
