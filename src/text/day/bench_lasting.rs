//! The sentences of the bench where no clock is known, as on a card: how long, not until when.

use super::bench_step::{bench_meanwhile, bench_sentence};
use super::rise::signs_of;
use crate::engine::formula::Formula;
use crate::engine::quantity::Instant;
use crate::results::day::{BenchStep, WhichRise};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, tr};

/// The sentence of a step that begins then: with times of the clock where its zone is known, else
/// with how long it takes.
#[must_use]
pub fn listed_sentence(
    step: &BenchStep,
    begins: Instant,
    formula: &Formula,
    zone: Option<&Zone>,
    options: FormatOptions,
) -> String {
    match zone {
        Some(zone) => bench_sentence(step, formula, zone, options),
        None => lasting(step, begins, formula, options)
            .unwrap_or_else(|| bench_sentence(step, formula, &Zone::default(), options)),
    }
}

/// The sentence of a step that runs by itself from then on; `None` where nothing is to be watched.
#[must_use]
pub fn running_sentence(
    step: &BenchStep,
    begins: Instant,
    formula: &Formula,
    zone: Option<&Zone>,
    options: FormatOptions,
) -> Option<String> {
    let Some(zone) = zone else {
        let lasting = lasting(step, begins, formula, options);
        return match (lasting, step) {
            (Some(lasting), BenchStep::Rise { which, .. }) => {
                Some(format!("{lasting} {}", signs_of(*which)))
            }
            (Some(lasting), _) => Some(lasting),
            (None, _) => bench_meanwhile(step, formula, &Zone::default(), options),
        };
    };
    bench_meanwhile(step, formula, zone, options)
}

/// A sentence that says how long; `None` where the bench's own has no clock in it.
fn lasting(
    step: &BenchStep,
    begins: Instant,
    formula: &Formula,
    options: FormatOptions,
) -> Option<String> {
    let for_about = |until: Instant| format::about_minutes(until.since(begins), options);
    if let BenchStep::IntoFridge { part, until } = step {
        let own = formula.parts.get(*part);
        return Some(tr!(
            "{part} into the fridge, covered, for {time}.",
            part = own.map_or("", |own| own.name.as_str()),
            time = for_about(*until)
        ));
    }
    if let BenchStep::Stand { room, until } = step {
        return Some(tr!(
            "It stands covered at {room} for {time}, then goes into the fridge.",
            room = format::temperature(*room, options),
            time = for_about(*until)
        ));
    }
    if let BenchStep::Rise { which, at, between } = step {
        let [soonest, latest] = between.map(|at| at.since(begins));
        let time = format::about_range(soonest, latest, options);
        return Some(rise(*which, &format::temperature(*at, options), &time));
    }
    // How hot the middle is then stands at the bake.
    let BenchStep::Cool { cut, .. } = step else {
        return None;
    };
    Some(tr!(
        "Out of the oven, out of the tin, onto a rack. Cut it after {time}.",
        time = for_about(*cut)
    ))
}

fn rise(which: WhichRise, at: &str, time: &str) -> String {
    match which {
        WhichRise::Bulk => tr!(
            "The dough rises, covered, at {at} to about twice its size: {time}.",
            at = at,
            time = time
        ),
        WhichRise::Proof => tr!(
            "The pieces rise, covered, at {at} until they touch: {time}.",
            at = at,
            time = time
        ),
    }
}

/// What a list of steps has no number for.
#[must_use]
pub fn numbered_steps() -> &'static str {
    tr!("The numbers are the steps of the bench; what has none runs by itself, on a timer.")
}
