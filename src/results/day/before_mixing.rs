//! What is warmed or chilled before the dough is mixed, and when that begins.

use super::day_results::DayResults;
use super::input::DayInput;
use super::weighing::warm;
use crate::engine::formula::{Formula, LineAt, PartKind};
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Instant, Minutes, Temperature};

/// What is made ready before the dough is mixed.
#[derive(Clone, Debug, PartialEq)]
pub struct BeforeMixing {
    /// When that begins.
    pub at: Instant,
    /// The lines that are not used as warm as they are stored, each with its temperature.
    pub lines: Vec<(LineAt, Temperature)>,
    /// The temperature of the mixing bowl, where it is warmed or chilled.
    pub bowl: Option<Temperature>,
    /// The pastes and preferments that come out of the fridge now.
    pub out: Vec<usize>,
}

/// Milk, flour and bowl are made warm in so long. Common practice.
const TAKES: Minutes = Minutes::known(15.0);

/// What is made ready before a step: where it is the mix, or what comes out of the fridge for it;
/// `None` for other steps, and where everything goes in as it is stored.
#[must_use]
pub fn before_mixing(input: &DayInput, results: &DayResults, step: StepAt) -> Option<BeforeMixing> {
    if step.work != StepKind::Mix {
        return None;
    }
    let (_, timed) = results.find(step)?;
    let lines = warmed(input);
    let bowl = input.sheet.heat.mixing_bowl;
    if lines.is_empty() && bowl.is_none() {
        return None;
    }
    let warms_up = results.plan.steps().iter().map(|one| one.at.work);
    let stand = warms_up.into_iter().any(|work| work == StepKind::WarmUp);
    Some(BeforeMixing {
        at: timed.begins.earlier(TAKES),
        lines,
        bowl,
        out: if stand {
            Vec::new()
        } else {
            cold(&input.sheet.formula)
        },
    })
}

/// The lines of the dough that are warmed or chilled.
#[must_use]
pub(super) fn warmed(input: &DayInput) -> Vec<(LineAt, Temperature)> {
    let parts = input.sheet.formula.parts.iter().enumerate();
    let lines = parts.flat_map(|(part, own)| {
        let lines = own.lines.iter().enumerate();
        lines.map(move |(line, _)| LineAt { part, line })
    });
    lines
        .filter_map(|at| Some((at, warm(input, at)?)))
        .collect()
}

/// The parts that were made ahead and kept cold.
fn cold(formula: &Formula) -> Vec<usize> {
    let parts = formula.parts.iter().enumerate();
    let ahead = |kind| matches!(kind, PartKind::Paste | PartKind::Preferment);
    parts
        .filter(|(_, part)| ahead(part.kind))
        .map(|(at, _)| at)
        .collect()
}
