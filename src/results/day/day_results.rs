//! `of`: a formula's rises, steps and times in one kitchen, by the local clock.

use super::bedtime::{Bedtime, bedtime};
use super::in_plan::{Planned, follow, in_plan};
use super::input::DayInput;
use super::nights::nights_between;
use super::paste_conflicts::{PasteConflict, paste_conflicts};
use super::preferment_conflicts::{PrefermentConflict, preferment_conflicts};
use super::ready_range::{ReadyRange, ready_range};
use super::ready_shares::ReadyInput;
use super::rises::{RiseInput, Rises, dough_rises};
use crate::engine::plan::{
    Aim, Around, Conflict, Plan, PlanError, Solved, Span, Step, StepAt, Timed,
};
use crate::engine::quantity::{Instant, Mass, Minutes, Temperature};
use crate::results::heat::expected_bake;
use crate::results::run::{DoughBasis, Run};

/// Every number of the day that does not depend on the step at the bench.
#[derive(Clone, Debug, PartialEq)]
pub struct DayResults {
    /// The run of the dough: its temperatures and rises, stage by stage.
    pub run: Run,
    /// The temperature of the place where the dough rises.
    pub bulk_place: Temperature,
    /// The steps, each after all it waits for.
    pub plan: Plan,
    /// The time the plan is solved from.
    pub aim: Aim,
    /// What the plan is solved around: nights, now, what is done, hands.
    pub around: Around,
    /// The times of the steps, with what is in conflict by five minutes or more.
    pub solved: Solved,
    /// Whether the bread is ready sooner than the time the bake began with, since the dough cannot wait
    /// for it.
    pub gives_way: bool,
    /// When the bread is ready, with its range; `None` where that is too late already.
    pub ready: Option<ReadyRange>,
    /// The night into which the bread may still bake; `None` where it is out before.
    pub bedtime: Option<Bedtime>,
    /// The pastes that cool too slowly for the kitchen's rules.
    pub paste_conflicts: Vec<PasteConflict>,
    /// The preferments that are not ripe when they leave the fridge.
    pub preferment_conflicts: Vec<PrefermentConflict>,
    /// The places of the steps in the plan's list, in the order of their start times.
    pub order: Vec<usize>,
    /// The nights between the first step and the table.
    pub nights: Vec<Span>,
    /// The time of work in all.
    pub hands: Minutes,
    /// The longest wait within a step.
    pub longest_wait: Minutes,
    /// The baking time of one load by the programme.
    pub programme: Minutes,
    /// The baking time of one load as this oven bakes.
    pub bake: Minutes,
}

/// The rises of a formula, its steps and their times.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::{self, DayInput};
/// use softcrumb::sheet::{Kitchen, Moment, civil::Zone, day::DaySettings, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let results = day::of(&DayInput {
///     sheet: &sheet,
///     kitchen: &Kitchen::default(),
///     settings: &DaySettings::default(),
///     learnt: &Learnt::default(),
///     rounded: None,
///     zone: &Zone::default(),
///     now: Moment::from_milliseconds(1_774_634_400_000.0)?, // Friday, 27 March 2026, 18:00
///     bench: None,
/// })?;
/// // Ready on Saturday at 16:00, with nothing in the way.
/// assert_eq!(results.solved.table.seconds(), 1_774_713_600);
/// assert!(results.solved.conflicts.is_empty());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// [`PlanError::NoDough`] where the formula's dough weighs nothing; [`PlanError::NoSuchRange`] where the least time in the fridge is more than the most;
/// [`PlanError::NoSteps`] where every step is left out; [`PlanError::TooManySteps`] for very many
/// parts or loads.
pub fn of(input: &DayInput) -> Result<DayResults, PlanError> {
    of_run(input, input.run())
}

/// Returns the same as [`of`], for a run of the same input that is known already.
///
/// # Errors
/// Those of [`of`].
pub fn of_run(input: &DayInput, run: Run) -> Result<DayResults, PlanError> {
    if input.sheet.formula.dough() <= Mass::ZERO {
        return Err(PlanError::NoDough);
    }
    let (run, planned) = follow(input, run)?;
    let run = in_plan(run, input, &planned);
    let Planned {
        plan,
        aim,
        around,
        solved,
        gives_way,
        ..
    } = planned;
    let ready = ready(input, &run, &plan, &solved);
    Ok(DayResults {
        paste_conflicts: paste_conflicts(input, &run),
        preferment_conflicts: preferment_conflicts(input, &run),
        bedtime: bedtime(input, ready.as_ref(), &plan, &solved),
        ready,
        programme: expected_bake(run.baking.as_ref().ok(), &input.sheet.heat),
        bake: run.bake_time(),
        run,
        bulk_place: input
            .rise_settings()
            .bulk_place
            .unwrap_or(input.kitchen.room),
        order: by_start(&solved),
        nights: nights_between(input, solved.begins, solved.table),
        hands: hands(&plan),
        longest_wait: longest_wait(&plan, &solved),
        plan,
        aim,
        around,
        solved,
        gives_way,
    })
}

/// The time the bread is ready; `None` where a step cannot begin when it would have to, or what is
/// over waits too long.
fn ready(input: &DayInput, run: &Run, plan: &Plan, solved: &Solved) -> Option<ReadyRange> {
    let can_be = solved.conflicts.iter().all(|conflict| match conflict {
        Conflict::TooLate { .. } | Conflict::Waits { .. } => false,
        Conflict::AtNight { .. } | Conflict::HandsFull { .. } => true,
    });
    can_be.then(|| {
        ready_range(&ReadyInput {
            plan,
            solved,
            stages: &run.stages,
            dough: by_dough(input, run),
            bake: input.bake(),
            now: input.now.instant(),
        })
    })
}

/// How much sooner and how much later both rises are over where the dough comes off the mixer as
/// warm, and as cold, as it may; none where it was measured.
fn by_dough(input: &DayInput, run: &Run) -> [Minutes; 2] {
    let none = [Minutes::ZERO; 2];
    let Ok(mixing) = &run.mixing else {
        return none;
    };
    if run.dough_basis != DoughBasis::Predicted {
        return none;
    }
    let both = |rises: &Rises| {
        let (bulk, proof) = (rises.bulk.as_ref().ok()?, rises.proof.as_ref().ok()?);
        Some(bulk.due.minutes() + proof.due.minutes())
    };
    let settings = input.rise_settings();
    let due = |dough| {
        both(&dough_rises(&RiseInput {
            formula: &run.formula,
            kitchen: input.kitchen,
            dough,
            pieces: input.sheet.batch.pieces.get(),
            settings: &settings,
            references: &run.references,
        }))
    };
    let (low, high) = (mixing.dough.low, mixing.dough.high);
    match (due(high), both(&run.rises), due(low)) {
        (Some(warm), Some(likely), Some(cold)) => [held(likely - warm), held(cold - likely)],
        _ => none,
    }
}

/// The places of the steps in the order of their start times; the plan's order where these are
/// equal.
fn by_start(solved: &Solved) -> Vec<usize> {
    let mut order: Vec<usize> = (0..solved.steps.len()).collect();
    order.sort_by_key(|place| solved.steps.get(*place).map(|timed| timed.begins));
    order
}

fn hands(plan: &Plan) -> Minutes {
    held(plan.steps().iter().map(|step| step.hands.minutes()).sum())
}

fn longest_wait(plan: &Plan, solved: &Solved) -> Minutes {
    let steps = solved.steps.iter().zip(plan.steps());
    let waits = steps.map(|(timed, step)| timed.lasts.minutes() - step.hands.minutes());
    held(waits.fold(0.0, f64::max))
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}

impl DayResults {
    /// When the bread is ready to cut, most likely; when the plan ends where that is not known.
    #[must_use]
    pub fn ready_to_cut(&self) -> Instant {
        let ready = self.ready.as_ref();
        ready.map_or(self.solved.table, |ready| ready.likely)
    }

    /// Returns the steps with their start and end, in the order of the plan's list.
    pub fn steps(&self) -> impl Iterator<Item = (&Step, &Timed)> {
        self.plan.steps().iter().zip(&self.solved.steps)
    }

    /// Returns the step at a place of the plan's list, with its start and end; `None` past its end.
    #[must_use]
    pub fn step(&self, place: usize) -> Option<(&Step, &Timed)> {
        self.plan
            .steps()
            .get(place)
            .zip(self.solved.steps.get(place))
    }

    /// Returns a step with its start and end; `None` where the plan does not have it.
    #[must_use]
    pub fn find(&self, at: StepAt) -> Option<(&Step, &Timed)> {
        self.step(self.plan.place(at)?)
    }
}
