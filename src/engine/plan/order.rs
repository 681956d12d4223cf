//! Order: a plan of steps of which none waits for itself.

use super::error::PlanError;
use super::step::{Step, StepAt};

/// Steps that wait for each other, in an order in which each comes after all it waits for.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    steps: Vec<Step>,
}

impl Plan {
    /// The most steps there may be.
    pub const MOST: usize = 60;

    /// Takes steps in any order; their places may change.
    ///
    /// # Errors
    /// [`PlanError`] for none, too many, a missing input, or a circle.
    pub fn of(steps: Vec<Step>) -> Result<Self, PlanError> {
        if steps.is_empty() {
            return Err(PlanError::NoSteps);
        }
        if steps.len() > Self::MOST {
            return Err(PlanError::TooManySteps { most: Self::MOST });
        }
        for (step, one) in steps.iter().enumerate() {
            if let Some(input) = one.after.iter().find(|input| **input >= steps.len()) {
                return Err(PlanError::NoSuchInput {
                    step,
                    input: *input,
                });
            }
        }
        in_order(steps)
    }

    /// The steps.
    #[must_use]
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The steps, to be taken apart.
    #[must_use]
    pub fn into_steps(self) -> Vec<Step> {
        self.steps
    }

    /// Where in the list a step stands.
    #[must_use]
    pub fn place(&self, at: StepAt) -> Option<usize> {
        self.steps.iter().position(|step| step.at == at)
    }
}

/// Puts each step after all it waits for, and otherwise leaves the order as it is.
fn in_order(steps: Vec<Step>) -> Result<Plan, PlanError> {
    // Where each step of the old list stands in the new one.
    let mut placed: Vec<Option<usize>> = vec![None; steps.len()];
    let mut order = Vec::with_capacity(steps.len());
    for _ in 0..steps.len() {
        let ready = steps.iter().enumerate().find(|(place, step)| {
            let still_out = placed.get(*place) == Some(&None);
            still_out && step.after.iter().all(|input| is_placed(&placed, *input))
        });
        let Some((place, _)) = ready else {
            let step = placed.iter().position(Option::is_none).unwrap_or_default();
            return Err(PlanError::GoesInCircles { step });
        };
        if let Some(mark) = placed.get_mut(place) {
            *mark = Some(order.len());
        }
        order.push(place);
    }
    let mut found = Vec::with_capacity(steps.len());
    for place in order {
        if let Some(step) = steps.get(place) {
            let mut step = step.clone();
            step.after = step
                .after
                .iter()
                .filter_map(|input| placed.get(*input).copied().flatten())
                .collect();
            step.after.sort_unstable();
            step.after.dedup();
            found.push(step);
        }
    }
    Ok(Plan { steps: found })
}

fn is_placed(placed: &[Option<usize>], input: usize) -> bool {
    placed.get(input).is_some_and(Option::is_some)
}
