//! How a bake moves against its plan, and what makes up for it.

use super::bench::dough_off;
use crate::engine::formula::Formula;
use crate::engine::plan::StepAt;
use crate::engine::quantity::{Instant, Minutes, Temperature};
use crate::results::day::{Planned, RiseOff, WhichRise, gives};
use crate::results::heat::StillNeeds;
use crate::sheet::civil::Zone;
use crate::sheet::day::Bench;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// What is smaller than this is no difference, min.
const NOTHING: f64 = 3.0;

/// How much later or sooner a step begins than promised; nothing where it is about on time.
#[must_use]
pub fn off_time(
    promised: Instant,
    begins: Instant,
    zone: &Zone,
    options: FormatOptions,
) -> Option<String> {
    let (late, soon) = (begins.since(promised), promised.since(begins));
    let then = format::clock_at(promised, zone);
    if late.minutes() >= NOTHING {
        let late = format::minutes(late, options);
        Some(tr!(
            "This was to begin at {then}: it is {late} late.",
            then = then,
            late = late
        ))
    } else if soon.minutes() >= NOTHING {
        let soon = format::minutes(soon, options);
        Some(tr!(
            "This was to begin at {then}: it is {soon} early.",
            then = then,
            soon = soon
        ))
    } else {
        None
    }
}

/// What of the plan has moved since the bake began, a sentence each.
#[must_use]
pub fn moved(
    planned: &Planned,
    bench: &Bench,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> Vec<String> {
    let mut said: Vec<String> = gives(planned, bench)
        .into_iter()
        .map(|(at, was, now)| gives_way(at, was, now, planned, formula, options))
        .collect();
    if let Some(promised) = bench.promised_table() {
        let table = planned.solved.table;
        let off = table.since(promised).minutes() + promised.since(table).minutes();
        let (now, then) = (
            format::day_and_clock(table, zone),
            format::day_and_clock(promised, zone),
        );
        if off >= NOTHING {
            said.push(tr!(
                "Bread is on the table {now} instead of {then}.",
                now = now,
                then = then
            ));
        } else if !said.is_empty() && planned.solved.conflicts.is_empty() {
            said.push(tr!(
                "Bread is on the table {then}, as planned.",
                then = then
            ));
        }
    }
    said
}

fn gives_way(
    at: StepAt,
    was: Minutes,
    now: Minutes,
    planned: &Planned,
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let steps = planned.plan.steps();
    let step = steps.iter().find(|step| step.at == at);
    let called = step.map_or_else(
        || name::step_at(at, formula),
        |step| name::step(step, formula),
    );
    let (was, now) = (format::minutes(was, options), format::minutes(now, options));
    tr!(
        "“{called}” lasts {now} instead of {was}.",
        called = called,
        now = now,
        was = was
    )
}

/// What is off about a rise: the dough's temperature, its beginning, how long it takes.
#[must_use]
pub fn rise_off(
    off: &RiseOff,
    dough: Option<(Temperature, Temperature)>,
    options: FormatOptions,
) -> Vec<String> {
    let mut said = Vec::new();
    if let (Some((wished, got)), WhichRise::Bulk) = (dough, off.which) {
        said.push(dough_off(wished, got, options));
    }
    let (now, wished) = (
        format::minutes(off.now, options),
        format::minutes(off.wished, options),
    );
    if now != wished {
        said.push(match off.which {
            WhichRise::Bulk => tr!(
                "The bulk rise takes {now} instead of {wished}.",
                now = now,
                wished = wished
            ),
            WhichRise::Proof => tr!(
                "The proof takes {now} instead of {wished}.",
                now = now,
                wished = wished
            ),
        });
    }
    if off.late > Minutes::ZERO {
        let late = format::minutes(off.late, options);
        said.push(tr!("It begins {late} later than planned.", late = late));
    }
    if let Some(place) = off.chosen {
        let place = format::temperature(place, options);
        said.push(tr!("It is put where it is {place}.", place = place));
    }
    said
}

/// A place that makes up for it, as something to tap; nothing where none does better.
#[must_use]
pub fn place_for(off: &RiseOff, options: FormatOptions) -> Option<(Temperature, String)> {
    let place = off.place?;
    let wanted = off.wished.minutes() - off.late.minutes();
    let miss = |due: Minutes| (due.minutes() - wanted).abs();
    // Where it is now does as well.
    if off.chosen == Some(place.at) || miss(place.due) + 1.0 > miss(off.now) {
        return None;
    }
    let (at, due) = (
        format::temperature(place.at, options),
        format::minutes(place.due, options),
    );
    let said = if place.due < off.now {
        tr!(
            "Put it in a warmer place, {at}: up in {due}",
            at = at,
            due = due
        )
    } else {
        tr!(
            "Put it in a cooler place, {at}: up in {due}",
            at = at,
            due = due
        )
    };
    Some((place.at, said))
}

/// What a measured paste or preferment still needs.
#[must_use]
pub fn time_to_target(
    called: &str,
    at: Temperature,
    needs: &StillNeeds,
    options: FormatOptions,
) -> String {
    let (at, wanted) = (
        format::temperature(at, options),
        format::temperature(needs.wanted, options),
    );
    if needs.there.minutes() < 1.0 {
        return tr!(
            "{called} is at {at}, and {wanted} is enough: it can go on.",
            called = called,
            at = at,
            wanted = wanted
        );
    }
    let there = format::about_minutes(needs.there, options);
    tr!(
        "{called} is at {at}; the plan has it at {wanted} by now. It needs about {there} more.",
        called = called,
        at = at,
        wanted = wanted,
        there = there
    )
}

/// Waiting for it, as something to tap.
#[must_use]
pub fn wait_for(minutes: Minutes, options: FormatOptions) -> String {
    let minutes = format::minutes(minutes, options);
    tr!("Wait {minutes} more", minutes = minutes)
}

/// Ice water instead, as something to tap.
#[must_use]
pub fn ice_for(minutes: Minutes, options: FormatOptions) -> String {
    let minutes = format::minutes(minutes, options);
    tr!("Stand it in ice water for {minutes}", minutes = minutes)
}
