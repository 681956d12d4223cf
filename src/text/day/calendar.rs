//! The steps of a plan as entries of a calendar.

use super::rise::signs;
use crate::engine::formula::Formula;
use crate::results::day::DayResults;
use crate::storage::calendar::Event;
use crate::text::name;

/// An entry for each step; steps that need hands are announced.
///
/// `id` keeps the entries of one formula apart from those of others.
#[must_use]
pub fn calendar_events(results: &DayResults, formula: &Formula, id: &str) -> Vec<Event> {
    let steps = results.steps().enumerate();
    let events = steps.map(|(place, (step, timed))| Event {
        uid: format!("{id}-{place}-{}@softcrumb", timed.begins.seconds()),
        begins: timed.begins,
        ends: timed.ends,
        summary: name::step(step, formula),
        description: signs(step.at.work).to_owned(),
        announced: timed.hands_until > timed.begins,
    });
    events.collect()
}
