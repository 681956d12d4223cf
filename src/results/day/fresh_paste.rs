//! A paste measured as it comes off the kettle: whether it got hot enough for its starch.

use super::input::DayInput;
use super::part_warmth::{PartWarmth, part_warmth};
use crate::engine::heat::Paste;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Minutes, Temperature};
use crate::results::heat::paste;

/// A paste just after stirring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FreshPaste {
    /// The temperature that was measured.
    pub measured: Temperature,
    /// Where the first of its starch cooks.
    pub begins: Temperature,
    /// What it must come to, so that all of it cooks.
    pub goal: Temperature,
}

impl FreshPaste {
    /// Whether it is not hot enough.
    #[must_use]
    pub fn is_short(&self) -> bool {
        self.measured < self.goal
    }
}

/// What a measured temperature says at a step.
#[derive(Clone, Debug, PartialEq)]
pub enum FoundWarmth {
    /// Of a paste just after stirring: whether it is hot enough.
    Fresh(FreshPaste),
    /// Of what cools or warms: how long it still needs.
    Needs(PartWarmth),
    /// Of what is about to go into the fridge: it goes on cooling there, and waits for nothing.
    GoesIn(Temperature),
}

/// A paste that was stirred longer ago than this has cooled, min. Common practice.
const STILL_HOT: f64 = 10.0;

/// A paste that is colder than this has cooled, °C: boiling water on flour leaves no bowl so cold. Common
/// practice.
const LEAST_HOT: f64 = 40.0;

/// Returns what the temperature says that was measured of a part at a step; `None` where none was.
///
/// A paste is judged by its starch at the step that makes it; at the step that cools it, where it was
/// stirred a few minutes ago, has not begun to cool by the clock, and is too cold for its starch.
#[must_use]
pub fn found_warmth(input: &DayInput, step: StepAt, part: usize) -> Option<FoundWarmth> {
    if step.work == StepKind::Scald {
        return fresh_paste(input, step, part).map(FoundWarmth::Fresh);
    }
    let warmth = part_warmth(input, step, part)?;
    let goes_in = matches!(step.work, StepKind::ChillPaste | StepKind::ChillPreferment);
    if goes_in && input.bench?.bake.began(step).is_none() {
        return Some(FoundWarmth::GoesIn(warmth.measured));
    }
    let is_fresh = step.work == StepKind::CoolPaste
        && warmth.measured.celsius() >= LEAST_HOT
        && is_just_stirred(input, step);
    let fresh = fresh_paste(input, step, part).filter(|fresh| is_fresh && fresh.is_short());
    Some(fresh.map_or(FoundWarmth::Needs(warmth), FoundWarmth::Fresh))
}

/// Whether the paste of a step was stirred so little ago, when it was measured, that it has not cooled.
fn is_just_stirred(input: &DayInput, cools: StepAt) -> bool {
    let stirred = || {
        let bench = input.bench?;
        let when = bench.found(cools, cools.of)?.when;
        let scald = StepAt {
            work: StepKind::Scald,
            of: cools.of,
        };
        let mut steps = bench.bake.steps.iter();
        let stirred = steps.find(|done| done.step == scald)?.ended?;
        let begun = bench.bake.began(cools).is_some_and(|began| began <= when);
        Some(!begun && when.instant().since(stirred.instant()) <= still_hot())
    };
    stirred().unwrap_or_default()
}

fn still_hot() -> Minutes {
    Minutes::from_minutes(STILL_HOT).unwrap_or(Minutes::ZERO)
}

/// A paste that was measured at a step, beside what its starch needs.
fn fresh_paste(input: &DayInput, step: StepAt, part: usize) -> Option<FreshPaste> {
    let number = u16::try_from(part).ok()?;
    let measured = input.bench?.found(step, number)?.at;
    let sheet = input.sheet;
    let asked = paste(&sheet.formula, part, input.kitchen, &sheet.heat.paste);
    let asked: Paste = asked.ok()??;
    let begins = asked.flours.iter().map(|flour| flour.grain.cooks().begins);
    Some(FreshPaste {
        measured,
        begins: begins.reduce(Temperature::min_of)?,
        goal: asked.goal(),
    })
}
