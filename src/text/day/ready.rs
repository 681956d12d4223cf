//! When the bread is ready, with its range, in sentences and as working.

use super::corrections::ready_change;
use super::path::path_working;
use crate::engine::formula::Formula;
use crate::engine::quantity::Instant;
use crate::engine::working::WorkingLine;
use crate::results::day::{
    DayResults, ReadyItem, ReadyMargin, ReadyRange, ReadyTime, StepCorrections,
};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// "Ready to cut Sat 16:00, between 15:10 and 17:25.", and for a wished time how the latest lies to
/// it; `None` where nothing is left that could be off, or it is too late already.
#[must_use]
pub fn ready(results: &DayResults, zone: &Zone, options: FormatOptions) -> Option<String> {
    let range = ready_between(results, zone)?;
    let ready = results.ready.as_ref()?;
    let is_set = !results.gives_way;
    let margin = ready
        .margin(results.aim)
        .filter(|_| is_set)
        .map(|margin| ready_margin(margin, options));
    Some(match margin {
        Some(margin) if !margin.is_empty() => format!("{range} {margin}"),
        Some(_) | None => range,
    })
}

/// "Ready to cut Sat 16:00, between 15:10 and 17:25."; `None` where nothing is left that could be off,
/// or it is too late already.
#[must_use]
pub fn ready_between(results: &DayResults, zone: &Zone) -> Option<String> {
    let ready = results.ready.as_ref().filter(|ready| !ready.is_certain())?;
    let (soonest, latest) = ends(ready, zone);
    Some(tr!(
        "Ready to cut {likely}, between {soonest} and {latest}.",
        likely = format::day_and_clock(ready.likely, zone),
        soonest = soonest,
        latest = latest
    ))
}

/// The same where the time has moved: "The bread can be cut Sat 13:44 instead of Sat 16:00, between
/// 12:50 and 15:00."; `None` where it has not.
#[must_use]
pub fn ready_moved(found: &StepCorrections, results: &DayResults, zone: &Zone) -> Option<String> {
    let Some(ReadyTime::Moved { planned, now }) = found.ready else {
        return None;
    };
    let Some(ready) = results.ready.as_ref().filter(|ready| !ready.is_certain()) else {
        return ready_change(found, zone);
    };
    let (soonest, latest) = ends(ready, zone);
    Some(tr!(
        "The bread can be cut {now} instead of {then}, between {soonest} and {latest}.",
        now = format::day_and_clock(now, zone),
        then = format::day_and_clock(planned, zone),
        soonest = soonest,
        latest = latest
    ))
}

/// Both ends by the clock, with their days where these differ from that of the likely time.
fn ends(ready: &ReadyRange, zone: &Zone) -> (String, String) {
    let date = |at: Instant| zone.civil(at).date;
    let clock = |at| {
        if date(at) == date(ready.likely) {
            format::clock_at(at, zone)
        } else {
            format::day_and_clock(at, zone)
        }
    };
    let [soonest, latest] = ready.shown();
    (clock(soonest), clock(latest))
}

/// How the latest lies to a wished time; empty where it is just in time.
fn ready_margin(margin: ReadyMargin, options: FormatOptions) -> String {
    match margin {
        ReadyMargin::Late(by) => tr!(
            "At the latest that is {by} after the time you set: to be sure of it, set it {by} earlier.",
            by = format::minutes(by, options)
        ),
        ReadyMargin::ToSpare(by) if by.minutes() >= 1.0 => tr!(
            "Even at the latest there are {by} to spare before the time you set.",
            by = format::minutes(by, options)
        ),
        ReadyMargin::ToSpare(_) => String::new(),
    }
}

/// The working of the time on the table: the path to it, then its range.
#[must_use]
pub fn table_working(results: &DayResults, formula: &Formula) -> Vec<WorkingLine> {
    let mut lines = path_working(results, formula);
    if let Some(ready) = &results.ready {
        lines.extend(ready.working(|item| item_name(item, results, formula)));
    }
    lines
}

fn item_name(item: &ReadyItem, results: &DayResults, formula: &Formula) -> String {
    let called = |place: usize| {
        let step = results.step(place);
        step.map_or_else(String::new, |(step, _)| name::step(step, formula))
    };
    match item {
        ReadyItem::Step { step, .. } => called(*step),
        ReadyItem::Dough { .. } => tr!("dough not measured").to_owned(),
        ReadyItem::Wait { step, .. } => tr!("it waits: {step}", step = called(*step)),
    }
}
