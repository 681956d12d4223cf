//! The end of a bake: what was found in it, and what was predicted, what happened, what the next bake
//! assumes.

use super::day_results::DayResults;
use super::input::DayInput;
use super::weighing_effect::weighing_effect;
use crate::engine::formula::PartKind;
use crate::engine::learn::Observation;
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::day::{Bake, Bench, PlanSnapshot, WeighedOtherwise};

/// A figure of the summary.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SummaryFigure {
    /// A temperature as it is predicted.
    Expected(Temperature),
    /// A temperature as it was measured.
    Measured(Temperature),
    /// A duration.
    Lasts(Minutes),
}

/// A row of the summary.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SummaryRow {
    /// The step it is about: mixing, a rise, the bake.
    pub of: StepKind,
    /// What was predicted as the bake began.
    pub predicted: Option<SummaryFigure>,
    /// What happened; `None` where it was not noted.
    pub happened: Option<SummaryFigure>,
    /// What the next bake assumes.
    pub next: Option<SummaryFigure>,
}

/// Notes what was found at the bench: the water of the masses weighed, those that were not as asked,
/// and the last temperature of a paste.
pub fn note_findings(bench: &mut Bench, input: &DayInput) {
    let water = weighing_effect(input).true_water;
    // Where no weight was ticked, nobody knows what was weighed.
    let water = water.filter(|_| !bench.weighed.is_empty());
    let water = water.map(|(_, weighed)| weighed);
    bench.bake.found.water = water.or(bench.bake.found.water);
    bench.bake.weighed = weighed_otherwise(input);
    let is_paste = |part: u16| {
        let own = input.sheet.formula.parts.get(usize::from(part));
        own.is_some_and(|own| own.kind == PartKind::Paste)
    };
    let mut measured = bench.measured.iter().rev();
    let paste = measured.find(|found| is_paste(found.part));
    bench.bake.found.paste = paste.map(|found| found.at).or(bench.bake.found.paste);
}

/// The lines of which another mass was weighed than was asked.
fn weighed_otherwise(input: &DayInput) -> Vec<WeighedOtherwise> {
    let differences = weighing_effect(input).differences.into_iter();
    let found = differences.filter_map(|line| {
        let food = &input.sheet.formula.line(line.at)?.food;
        Some(WeighedOtherwise {
            food: food.name().to_owned(),
            asked: line.target,
            weighed: line.actual,
        })
    });
    found.take(Bake::MOST_WEIGHED).collect()
}

/// Returns what a bake noted, its rises and its bake beside the time that the bench expected as each
/// began; beside the formula's own where that was not noted.
#[must_use]
pub fn as_expected(bake: &Bake) -> Observation {
    let mut noted = bake.noted;
    let durations = [
        (StepKind::Bulk, &mut noted.bulk),
        (StepKind::Proof, &mut noted.proof),
        (StepKind::Bake, &mut noted.bake),
    ];
    for (work, took) in durations {
        let own = bake.steps.iter().filter(|done| done.step.work == work);
        let expected: Option<Vec<Minutes>> = own.map(|done| done.expected).collect();
        let sum: Option<f64> = expected.map(|all| all.iter().map(|one| one.minutes()).sum());
        let sum = sum.filter(|sum| *sum > 0.0);
        let sum = sum.and_then(|sum| Minutes::from_minutes(sum).ok());
        if let (Some(took), Some(expected)) = (took, sum) {
            took.expected = expected;
        }
    }
    noted
}

/// What was predicted as the bake began, what happened, and what the `next` bake of this dough
/// assumes.
#[must_use]
pub fn bake_summary(
    planned: &[PlanSnapshot],
    dough: Option<Temperature>,
    bake: &Bake,
    next: &DayResults,
) -> Vec<SummaryRow> {
    let lasted = |work: StepKind| {
        let own = planned.iter().filter(|one| one.step.work == work);
        let sum: f64 = own.map(|one| one.lasts.minutes()).sum();
        lasts(sum)
    };
    let lasts_next = |work: StepKind| {
        let steps = next.steps().filter(|(step, _)| step.at.work == work);
        let sum: f64 = steps.map(|(_, timed)| timed.lasts.minutes()).sum();
        lasts(sum)
    };
    let took = [
        (StepKind::Bulk, bake.noted.bulk),
        (StepKind::Proof, bake.noted.proof),
        (StepKind::Bake, bake.noted.bake),
    ];
    let mixed = SummaryRow {
        of: StepKind::Mix,
        predicted: dough.map(SummaryFigure::Expected),
        happened: bake.noted.dough.map(SummaryFigure::Measured),
        next: Some(SummaryFigure::Expected(next.run.dough)),
    };
    let rows = took.into_iter().map(|(of, took)| SummaryRow {
        of,
        predicted: lasted(of),
        happened: took.map(|took| SummaryFigure::Lasts(took.minutes)),
        next: lasts_next(of),
    });
    std::iter::once(mixed).chain(rows).collect()
}

fn lasts(minutes: f64) -> Option<SummaryFigure> {
    let minutes = Minutes::from_minutes(minutes).ok()?;
    (minutes > Minutes::ZERO).then_some(SummaryFigure::Lasts(minutes))
}
