//! `of`: a formula's rises, steps and times in one kitchen, by the local clock.

use super::input::DayInput;
use super::target::target;
use crate::engine::learn::Learnt;
use crate::engine::plan::{
    Aim, Around, Done, Plan, PlanError, Solved, Span, Step, StepAt, Timed, edited, solve, usual,
};
use crate::engine::quantity::{Instant, Minutes, Temperature};
use crate::results::batch::scale;
use crate::results::heat::{InOven, TimesAsked, times};
use crate::results::run::{Run, between};
use crate::sheet::Moment;
use crate::sheet::civil::nights;
use crate::sheet::day::Bake;

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
    /// The times of the steps.
    pub solved: Solved,
    /// The places of the steps in the plan's list, in the order of their start times.
    pub order: Vec<usize>,
    /// The nights between the first step and the table.
    pub asleep: Vec<Span>,
    /// The time of work in all.
    pub hands: Minutes,
    /// The longest wait within a step.
    pub longest_wait: Minutes,
    /// The baking time of one load by the programme.
    pub programme: Minutes,
    /// The baking time of one load as this oven bakes.
    pub bake: Minutes,
}

/// How far around the target nights are looked for.
const NIGHTS_WITHIN_DAYS: f64 = 6.0;

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
/// [`PlanError::NoSuchRange`] where the least time in the fridge is more than the most;
/// [`PlanError::NoSteps`] where every step is left out; [`PlanError::TooManySteps`] for very many
/// parts or loads.
pub fn of(input: &DayInput) -> Result<DayResults, PlanError> {
    let (sheet, settings) = (input.sheet, input.settings);
    let kitchen = &input.taught_kitchen();
    let run = input.run();
    let asked = TimesAsked {
        bulk: between(&run.rises.bulk, settings.rises.bulk.time),
        proof: between(&run.rises.proof, settings.rises.proof.time),
        chill: settings.in_fridge()?,
        loads: settings.loads,
        pieces: sheet.batch.pieces.get(),
        in_oven: InOven::of(
            sheet,
            scale(sheet).ok().as_ref(),
            run.rises.temperatures.proofed,
        ),
    };
    let mut times = times(&run.formula, kitchen, &sheet.heat, &settings.rises, &asked);
    let programme = sum(&times.bake);
    times.bake = as_this_oven_bakes(&times.bake, input.learnt);
    let mut plan = edited(&usual(&sheet.formula, &times)?, &settings.edits)?;
    if let Some(bench) = input.bench {
        plan = edited(&plan, &bench.edits)?;
    }
    let aim = target(input);
    let solved = solve(&plan, aim, &around(input, &plan, aim));
    Ok(DayResults {
        run,
        bulk_place: input.rise_settings().bulk_place.unwrap_or(kitchen.room),
        order: by_start(&solved),
        asleep: asleep(input, solved.begins, solved.table),
        hands: hands(&plan),
        longest_wait: longest_wait(&plan, &solved),
        plan,
        aim,
        solved,
        programme,
        bake: sum(&times.bake),
    })
}

fn sum(phases: &[Minutes]) -> Minutes {
    held(phases.iter().map(|phase| phase.minutes()).sum())
}

/// The phases of the programme, each scaled by the factor that the log has taught.
fn as_this_oven_bakes(phases: &[Minutes], learnt: &Learnt) -> Vec<Minutes> {
    let factor = learnt
        .bake
        .as_ref()
        .map_or(1.0, |bake| bake.factor.number());
    let phases = phases.iter();
    phases.map(|phase| held(phase.minutes() * factor)).collect()
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

/// The nights between two times; none where the baker works through.
fn asleep(input: &DayInput, from: Instant, until: Instant) -> Vec<Span> {
    input.settings.sleep.map_or_else(Vec::new, |sleep| {
        nights(input.zone, (sleep.from, sleep.until), from, until)
    })
}

fn around(input: &DayInput, plan: &Plan, aim: Aim) -> Around {
    let (Aim::Table(at) | Aim::From(at)) = aim;
    let days = Minutes::from_hours(NIGHTS_WITHIN_DAYS * 24.0).unwrap_or(Minutes::ZERO);
    Around {
        asleep: asleep(input, at.earlier(days), at.later(days)),
        now: Some(input.now.instant()),
        done: input.bake().map_or_else(Vec::new, |bake| done(bake, plan)),
        one_pair_of_hands: input.settings.one_pair_of_hands,
    }
}

/// The steps of a bake that the plan has too.
fn done(bake: &Bake, plan: &Plan) -> Vec<Done> {
    let steps = bake.steps.iter().filter_map(|done| {
        Some(Done {
            step: plan.place(done.step)?,
            began: done.began.instant(),
            ended: done.ended.map(Moment::instant),
        })
    });
    steps.collect()
}

fn held(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes.clamp(0.0, *Minutes::RANGE.end())).unwrap_or(Minutes::ZERO)
}

impl DayResults {
    /// The steps with their times, in the order of the plan's list.
    pub fn steps(&self) -> impl Iterator<Item = (&Step, &Timed)> {
        self.plan.steps().iter().zip(&self.solved.steps)
    }

    /// The step at a place of the plan's list, with its times.
    #[must_use]
    pub fn step(&self, place: usize) -> Option<(&Step, &Timed)> {
        self.plan
            .steps()
            .get(place)
            .zip(self.solved.steps.get(place))
    }

    /// A step with its times; `None` where the plan does not have it.
    #[must_use]
    pub fn find(&self, at: StepAt) -> Option<(&Step, &Timed)> {
        self.step(self.plan.place(at)?)
    }
}
