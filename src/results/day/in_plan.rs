//! The run in its plan: each is worked out from the other until they agree, so that a paste or
//! preferment is as warm as its real time in the fridge leaves it, and as ripe.

use super::around::around;
use super::gives_way::as_soon_as_it_can_be;
use super::grave::keep_grave;
use super::input::DayInput;
use super::plan_times::plan_times;
use super::preferment::preferment_rise;
use super::target::target;
use crate::engine::plan::{Aim, Around, Plan, PlanError, Solved, edited, solve, usual};
use crate::engine::rise::RiseSettings;
use crate::results::heat::{TimesAsked, times};
use crate::results::run::{PlanTimes, Run, StageKind, between};

/// The steps of a run and their times.
pub(super) struct Planned {
    /// The steps.
    pub(super) plan: Plan,
    /// The time the plan is solved from.
    pub(super) aim: Aim,
    /// What it is solved around.
    pub(super) around: Around,
    /// When each step is.
    pub(super) solved: Solved,
    /// Whether the time the bake began with has given way.
    pub(super) gives_way: bool,
    /// How long it has each paste and preferment where.
    times: PlanTimes,
}

/// How often run and plan are worked out from each other at the most. A minute more in the fridge
/// moves a rise by seconds, so that two rounds are enough where a plan does not leap.
const MOST_ROUNDS: u8 = 4;

/// Follows the run by the plan that follows from it, until neither changes the other.
pub(super) fn follow(input: &DayInput, run: Run) -> Result<(Run, Planned), PlanError> {
    let mut run = run;
    let mut planned = plan(input, &run)?;
    for _ in 1..MOST_ROUNDS {
        if input.agrees(&run, &planned.times) {
            break;
        }
        run = input.run_in(&planned.times, &run.coolings);
        planned = plan(input, &run)?;
    }
    Ok((run, planned))
}

/// The plan of a run.
fn plan(input: &DayInput, run: &Run) -> Result<Planned, PlanError> {
    let (sheet, settings) = (input.sheet, input.settings);
    let asked = TimesAsked {
        bulk: between(&run.rises.bulk, settings.rises.bulk.time),
        proof: between(&run.rises.proof, settings.rises.proof.time),
        chill: settings.in_fridge()?,
        loads: settings.loads,
        pieces: sheet.batch.pieces.get(),
        bake: &run.bake,
        baking: run.baking.as_ref().ok(),
    };
    let kitchen = &input.taught_kitchen();
    let known = (&asked, run.coolings.as_slice());
    let times = times(&run.formula, kitchen, &sheet.heat, &settings.rises, known);
    let mut plan = edited(&usual(&sheet.formula, &times)?, &settings.edits)?;
    if let Some(bench) = input.bench {
        plan = edited(&plan, &bench.edits)?;
    }
    let aim = target(input);
    let around = around(input, &plan, aim);
    let kept = solve(&plan, aim, &around);
    let soon = as_soon_as_it_can_be(input, &plan, (aim, &around), &kept);
    let gives_way = soon.is_some();
    let mut solved = soon.unwrap_or(kept);
    let aim = if gives_way {
        Aim::Table(solved.table)
    } else {
        aim
    };
    keep_grave(&mut solved, &around);
    let lasts = |at| Some(solved.steps.get(plan.place(at)?)?.lasts);
    Ok(Planned {
        times: plan_times(&sheet.formula, lasts),
        plan,
        aim,
        around,
        solved,
        gives_way,
    })
}

/// The run with the times of its plan to the second: the stages before the dough, and the ripeness
/// of each preferment as it then leaves the fridge.
pub(super) fn in_plan(mut run: Run, input: &DayInput, planned: &Planned) -> Run {
    for stage in &mut run.stages {
        let times = stage.part.and_then(|part| planned.times.part(part));
        match (stage.kind, times) {
            (StageKind::Stand, Some(times)) => stage.lasts = [times.standing; 3],
            (StageKind::Chill, Some(times)) => stage.lasts = [times.chilling; 3],
            _ => {}
        }
    }
    let (kitchen, rises) = (input.taught_kitchen(), input.rise_settings());
    let at = run.references.bulk.at;
    for own in run.rises.preferments.iter_mut().flatten() {
        let Some(times) = planned.times.part(own.part) else {
            continue;
        };
        let settings = RiseSettings {
            bench: times.standing,
            fridge: times.chilling,
            ..rises
        };
        if settings != rises
            && let Ok(rise) = preferment_rise(&run.formula, own.part, &kitchen, &settings, at)
        {
            *own = rise;
        }
    }
    run
}
