//! The list of a bake: the steps that the bench goes through, each with its figures and its weights,
//! and what then runs by itself. Card and link are this list.

use super::bench_figures::bench_step;
use super::bench_order::{in_order, is_counted};
use super::bench_step::BenchStep;
use super::day_results::DayResults;
use super::input::DayInput;
use super::weighing::{StepWeighing, step_weighing};
use crate::engine::heat::HeatFrom;
use crate::engine::plan::{Step, StepAt, Timed};

/// A step that the baker does or sets going.
#[derive(Clone, Debug, PartialEq)]
pub struct ListedStep {
    /// The step of the plan.
    pub step: Step,
    /// When it begins, and how long it lasts.
    pub timed: Timed,
    /// The figures of its sentence.
    pub figures: BenchStep,
    /// What goes in at it.
    pub weighing: StepWeighing,
    /// What begins when it is done and runs beside other work, on a timer.
    pub runs: Vec<RunningStep>,
}

/// A step that begins when the work before it is done.
#[derive(Clone, Debug, PartialEq)]
pub struct RunningStep {
    /// Which step.
    pub at: StepAt,
    /// Where the oven's heat comes from, for a phase of a bake that has several.
    pub heat: Option<HeatFrom>,
    /// When it begins, and how long it lasts.
    pub timed: Timed,
    /// The figures of its sentence.
    pub figures: BenchStep,
}

/// Lists the steps of the bench in its order; its length is the number of steps that the bench counts.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::{self, DayInput, bench_list};
/// use softcrumb::sheet::{Kitchen, Moment, civil::Zone, day::DaySettings, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let input = DayInput {
///     sheet: &sheet,
///     kitchen: &Kitchen::default(),
///     settings: &DaySettings::default(),
///     learnt: &Learnt::default(),
///     rounded: None,
///     zone: &Zone::default(),
///     now: Moment::default(),
///     bench: None,
/// };
/// let results = day::of(&input)?;
/// let list = bench_list(&input, &results);
/// // Every step of the plan is on the list once: under a number, or as what then runs by itself.
/// let runs: usize = list.iter().map(|step| step.runs.len()).sum();
/// assert_eq!(list.len() + runs, results.plan.steps().len());
/// # Ok::<(), softcrumb::engine::plan::PlanError>(())
/// ```
#[must_use]
pub fn bench_list(input: &DayInput, results: &DayResults) -> Vec<ListedStep> {
    let mut list: Vec<ListedStep> = Vec::new();
    for (step, timed) in in_order(results) {
        let Some(figures) = bench_step(input, results, step.at) else {
            continue;
        };
        let runs = RunningStep {
            at: step.at,
            heat: step.heat,
            timed: *timed,
            figures,
        };
        let before = (!is_counted(step)).then(|| before(&mut list, step, results));
        if let Some(Some(before)) = before {
            before.runs.push(runs);
            continue;
        }
        list.push(ListedStep {
            step: step.clone(),
            timed: *timed,
            figures: runs.figures,
            weighing: step_weighing(input, results, step.at),
            runs: Vec::new(),
        });
    }
    list
}

/// The last listed step that a step waits for, or with which something runs that it waits for.
fn before<'l>(
    list: &'l mut [ListedStep],
    step: &Step,
    results: &DayResults,
) -> Option<&'l mut ListedStep> {
    let steps = results.plan.steps();
    let inputs = step.after.iter().filter_map(|place| steps.get(*place));
    let inputs: Vec<StepAt> = inputs.map(|input| input.at).collect();
    list.iter_mut().rev().find(|listed| {
        let mut own = std::iter::once(listed.step.at).chain(listed.runs.iter().map(|one| one.at));
        own.any(|at| inputs.contains(&at))
    })
}
