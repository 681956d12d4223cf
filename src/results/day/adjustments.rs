//! Adjustments: steps that the plan makes longer or shorter than wished, and why.

use super::around::around;
use super::day_results::DayResults;
use super::input::DayInput;
use crate::engine::plan::{Around, StepKind, solve};
use crate::engine::quantity::Minutes;

/// Why a step is not as long as wished.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AdjustmentReason {
    /// Else two steps would need the same hands at once.
    Hands,
    /// Else work would fall into the night.
    Sleep,
    /// Else the work would have to have begun already, or the bread would be late.
    Time,
}

/// A step that is longer or shorter than wished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Adjustment {
    /// Its place in the plan's list.
    pub step: usize,
    /// How long it is wished to last.
    pub wished: Minutes,
    /// How long it lasts.
    pub lasts: Minutes,
    /// Why.
    pub reason: AdjustmentReason,
}

/// Less than this is not worth a sentence, min.
const NEGLIGIBLE: f64 = 1.0;

/// The steps that a plan makes longer or shorter than wished, each with the first limit without
/// which it would be as wished.
///
/// The oven, which may wait hot, and the melting of chocolate are left out.
#[must_use]
pub fn adjustments(input: &DayInput, results: &DayResults) -> Vec<Adjustment> {
    let moved: Vec<usize> = (0..results.solved.steps.len())
        .filter(|place| off(results, &results.solved.steps, *place).is_some())
        .collect();
    if moved.is_empty() {
        return Vec::new();
    }
    let given = around(input, &results.plan, results.aim);
    let with_help = Around {
        one_pair_of_hands: false,
        ..given.clone()
    };
    let awake = Around {
        nights: Vec::new(),
        ..given
    };
    let [helped, awake] =
        [with_help, awake].map(|around| solve(&results.plan, results.aim, &around).steps);
    let found = moved.into_iter().filter_map(|step| {
        let (wished, lasts) = off(results, &results.solved.steps, step)?;
        let reason = if off(results, &helped, step).is_none() {
            AdjustmentReason::Hands
        } else if off(results, &awake, step).is_none() {
            AdjustmentReason::Sleep
        } else {
            AdjustmentReason::Time
        };
        Some(Adjustment {
            step,
            wished,
            lasts,
            reason,
        })
    });
    found.collect()
}

/// How long a step is wished to last and how long it lasts, where these differ.
fn off(
    results: &DayResults,
    solved: &[crate::engine::plan::Timed],
    place: usize,
) -> Option<(Minutes, Minutes)> {
    let step = results.plan.steps().get(place)?;
    let is_told = matches!(
        step.at.work,
        StepKind::ChillPaste | StepKind::ChillPreferment | StepKind::Cool
    );
    let (wished, lasts) = (step.lasts.wished(), solved.get(place)?.lasts);
    let differs = (wished.minutes() - lasts.minutes()).abs() >= NEGLIGIBLE;
    (is_told && differs).then_some((wished, lasts))
}
