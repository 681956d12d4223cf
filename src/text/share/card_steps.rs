//! The steps of the bench in sentences, as a card and a link list them.

use crate::engine::formula::Formula;
use crate::results::day::ListedStep;
use crate::sheet::civil::Zone;
use crate::text::{
    caution::Hazard,
    day::{bench_note, caution_of, listed_sentence, running_sentence},
    format,
    format_options::FormatOptions,
    name,
};

/// A step of the bench in sentences.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CardStep {
    /// "Sat 7:45"; none where no time is set.
    pub begins: Option<String>,
    /// Its name.
    pub name: String,
    /// What to do.
    pub says: String,
    /// What then runs by itself, on a timer: its name, and what to watch.
    pub runs: Vec<(String, String)>,
    /// What it is risky for.
    pub hazard: Option<Hazard>,
}

/// The steps in the order of the bench; with times of the clock where a zone is given, else with how
/// long each takes.
#[must_use]
pub fn card_steps(
    list: &[ListedStep],
    formula: &Formula,
    zone: Option<&Zone>,
    options: FormatOptions,
) -> Vec<CardStep> {
    let one = |listed: &ListedStep| {
        let begins = listed.timed.begins;
        let mut says = listed_sentence(&listed.figures, begins, formula, zone, options);
        if let Some(note) = bench_note(&listed.figures, options) {
            says = format!("{says} {note}");
        }
        let runs = listed.runs.iter().filter_map(|runs| {
            let begins = runs.timed.begins;
            let says = running_sentence(&runs.figures, begins, formula, zone, options)?;
            Some((name::step_at(runs.at, formula), says))
        });
        CardStep {
            begins: zone.map(|zone| format::day_and_clock(begins, zone)),
            name: name::step(&listed.step, formula),
            says,
            runs: runs.collect(),
            hazard: caution_of(listed.step.at.work),
        }
    };
    list.iter().map(one).collect()
}
