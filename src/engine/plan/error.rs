//! What can stand in the way of a plan.

use crate::engine::quantity::Minutes;

/// Why there is no plan.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum PlanError {
    /// There is no dough to make.
    #[error("no dough")]
    NoDough,
    /// There is no step in it.
    #[error("no step")]
    NoSteps,
    /// There are more steps than there may be.
    #[error("more than {most} steps")]
    TooManySteps {
        /// The most there may be.
        most: usize,
    },
    /// A step waits for one that is not there.
    #[error("step {step} waits for {input}, which is not there")]
    NoSuchInput {
        /// The step that waits.
        step: usize,
        /// What it waits for.
        input: usize,
    },
    /// Steps wait for each other in a circle.
    #[error("step {step} waits for itself")]
    GoesInCircles {
        /// One of them.
        step: usize,
    },
    /// The least, the wished and the most are not in rising order.
    #[error("{least:?}, {wished:?}, {most:?} are not in rising order")]
    NoSuchRange {
        /// The least.
        least: Minutes,
        /// What is wished.
        wished: Minutes,
        /// The most.
        most: Minutes,
    },
}
