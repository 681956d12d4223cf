//! Edits: what a baker changes in the usual steps; what no longer fits is passed over.

use super::error::PlanError;
use super::order::Plan;
use super::step::{DurationRange, Step, StepAt, StepKind};
use crate::engine::quantity::Minutes;

/// One change of the usual steps.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// A step lasts so long.
    Duration {
        /// Which step.
        step: StepAt,
        /// How long.
        minutes: Minutes,
    },
    /// A step is left out.
    LeftOut {
        /// Which step.
        step: StepAt,
    },
    /// A step changes places with the one it waits for.
    Sooner {
        /// Which step.
        step: StepAt,
    },
    /// A step of one's own follows another.
    Added {
        /// Which step it follows.
        after: StepAt,
        /// Its number among one's own.
        number: u16,
        /// What it is called.
        name: String,
        /// How long it lasts.
        minutes: Minutes,
        /// How long hands are needed.
        hands: Minutes,
    },
}

impl Edit {
    /// The most a plan may have.
    pub const MOST: usize = 60;
}

/// The plan with these changes, one after the other. A change of a step that is not there, or that
/// cannot be, changes nothing.
///
/// # Errors
/// [`PlanError::NoSteps`] where every step is left out; [`PlanError::TooManySteps`].
pub fn edited(plan: &Plan, edits: &[Edit]) -> Result<Plan, PlanError> {
    let mut plan = plan.clone();
    for edit in edits {
        plan = match edit {
            Edit::Duration { step, minutes } => lasting(plan, *step, *minutes)?,
            Edit::LeftOut { step } => without(plan, *step)?,
            Edit::Sooner { step } => sooner(plan, *step)?,
            Edit::Added {
                after,
                number,
                name,
                minutes,
                hands,
            } => {
                let at = StepAt {
                    work: StepKind::Own,
                    of: *number,
                };
                let mut step = Step::new(at, DurationRange::just(*minutes), *hands, Vec::new());
                step.name.clone_from(name);
                following(plan, *after, step)?
            }
        };
    }
    Ok(plan)
}

/// What gives is wished so long; what does not lasts just so long.
fn lasting(plan: Plan, at: StepAt, minutes: Minutes) -> Result<Plan, PlanError> {
    let mut steps = plan.into_steps();
    for step in steps.iter_mut().filter(|step| step.at == at) {
        let within = step.lasts.least() <= minutes && minutes <= step.lasts.most();
        step.lasts = if step.lasts.is_flexible() && within {
            step.lasts.wishing(minutes)
        } else {
            DurationRange::just(minutes)
        };
        step.over_between = None;
        if step.hands > minutes {
            step.hands = minutes;
        }
    }
    Plan::of(steps)
}

/// Those that waited for the step wait for what it waited for.
fn without(plan: Plan, at: StepAt) -> Result<Plan, PlanError> {
    let Some(gone) = plan.place(at) else {
        return Ok(plan);
    };
    let mut steps = plan.into_steps();
    let inputs = steps.remove(gone).after;
    for step in &mut steps {
        if step.after.contains(&gone) {
            step.after.extend(&inputs);
        }
        step.after.retain(|input| *input != gone);
        for input in &mut step.after {
            if *input > gone {
                *input -= 1;
            }
        }
    }
    Plan::of(steps)
}

/// Changes places with the one step it waits for; nothing where it waits for none or several.
fn sooner(plan: Plan, at: StepAt) -> Result<Plan, PlanError> {
    let steps = plan.steps();
    let own = plan
        .place(at)
        .and_then(|place| Some((place, steps.get(place)?)));
    let Some((place, [input])) = own.map(|(place, step)| (place, step.after.as_slice())) else {
        return Ok(plan);
    };
    let (input, mut steps) = (*input, steps.to_vec());
    for step in &mut steps {
        for waits_for in &mut step.after {
            if *waits_for == place {
                *waits_for = input;
            }
        }
    }
    let before = steps.get(input).map(|step| step.after.clone());
    if let Some(step) = steps.get_mut(place) {
        step.after = before.unwrap_or_default();
    }
    if let Some(step) = steps.get_mut(input) {
        step.after = vec![place];
    }
    Plan::of(steps)
}

/// The new step waits for one, and all that waited for that one wait for the new.
fn following(plan: Plan, at: StepAt, mut new: Step) -> Result<Plan, PlanError> {
    let Some(place) = plan.place(at) else {
        return Ok(plan);
    };
    let mut steps = plan.into_steps();
    let own = steps.len();
    for step in &mut steps {
        for input in &mut step.after {
            if *input == place {
                *input = own;
            }
        }
    }
    new.after = vec![place];
    steps.push(new);
    Plan::of(steps)
}
