//! What solves the conflicts of a plan. The search takes many times as long as the plan itself, so
//! that the page asks for it after the frame.

use super::day_results::DayResults;
use crate::engine::plan::{self, Aim, Around, Change, Plan};

/// A plan with conflicts, and what it is solved from and around.
#[derive(Clone, Debug, PartialEq)]
pub struct ConflictedPlan {
    plan: Plan,
    aim: Aim,
    around: Around,
}

impl ConflictedPlan {
    /// Returns the plan of a day; `None` where it has no conflict.
    #[must_use]
    pub fn of(results: &DayResults) -> Option<Self> {
        (!results.solved.conflicts.is_empty()).then(|| Self {
            plan: results.plan.clone(),
            aim: results.aim,
            around: results.around.clone(),
        })
    }

    /// Returns what solves the conflicts, each change by itself.
    #[must_use]
    pub fn solutions(&self) -> Vec<Change> {
        plan::solutions(&self.plan, self.aim, &self.around)
    }
}
