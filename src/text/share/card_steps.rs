//! The steps of the bench in sentences, as a card and a link list them.

use crate::engine::class::OvenPlan;
use crate::engine::formula::Formula;
use crate::engine::plan::StepKind;
use crate::results::day::{BenchStep, ListedStep, later_than_first, load_begins};
use crate::results::heat::is_met;
use crate::sheet::civil::Zone;
use crate::text::{
    caution::Hazard,
    day::{caution_of, expected_dough, listed_sentence, load_waits, running_sentence},
    format,
    format_options::FormatOptions,
    name, tr,
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
    /// The caution that belongs to it, at the first of its steps.
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
        if let Some(note) = dough_note(&listed.figures, options) {
            says = format!("{says} {note}");
        }
        if let Some(note) = load_note(listed, list, options) {
            says = format!("{says} {note}");
        }
        let runs = listed.runs.iter().filter_map(|runs| {
            let begins = runs.timed.begins;
            let says = running_sentence(&runs.figures, begins, formula, zone, options)?;
            Some((name::step_with_heat(runs.at, runs.heat, formula), says))
        });
        CardStep {
            begins: zone.map(|zone| format::day_and_clock(begins, zone)),
            name: name::step(&listed.step, formula),
            says,
            runs: runs.collect(),
            hazard: caution_of(listed.step.at.work),
        }
    };
    let mut told = Vec::new();
    let mut steps: Vec<CardStep> = list.iter().map(one).collect();
    for step in &mut steps {
        step.hazard = step.hazard.filter(|hazard| !told.contains(hazard));
        told.extend(step.hazard);
    }
    steps
}

/// Says at the step where a load's dough begins how much later that is for the loaves of each load of
/// the class.
pub fn with_loads(
    steps: &mut [CardStep],
    list: &[ListedStep],
    oven: &OvenPlan,
    options: FormatOptions,
) {
    let waits = load_waits(oven, options);
    let begins = load_begins(list).and_then(|at| steps.get_mut(at));
    if let (Some(step), Some(waits)) = (begins, waits) {
        step.says = format!("{} {waits}", step.says);
    }
}

/// The minutes of a step of a later load: how much later than the first it goes in, or how long it takes.
fn load_note(listed: &ListedStep, list: &[ListedStep], options: FormatOptions) -> Option<String> {
    let later = later_than_first(&listed.step, list)?;
    Some(if listed.step.at.work == StepKind::LaterDough {
        tr!(
            "That is {time} later than the first.",
            time = format::minutes(later, options)
        )
    } else {
        tr!(
            "It takes {time}.",
            time = format::minutes(listed.timed.lasts, options)
        )
    })
}

/// How warm the dough comes off the mixer, and what to do where that is too cold.
fn dough_note(step: &BenchStep, options: FormatOptions) -> Option<String> {
    let BenchStep::Mix { dough, wished, .. } = step else {
        return None;
    };
    let comes = expected_dough(*dough, options);
    let wanted = wished.filter(|wished| *dough < *wished && !is_met(*dough, *wished));
    Some(match wanted {
        Some(wanted) => {
            let advice = tr!(
                "Wanted: {wanted}. Warm the liquid, and take what is in the fridge out earlier.",
                wanted = format::temperature(wanted, options)
            );
            format!("{comes} {advice}")
        }
        None => comes,
    })
}
