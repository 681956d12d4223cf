//! Plan: the steps of a bake, solved backwards from the table or forwards from now.
//!
//! In reading order: what a step is (`step`), a plan of steps that wait for each other (`order`),
//! the usual steps of a formula (`usual`), changing them (`edit`), times (`course`, `cost`,
//! `search`), solving with what is in the way and what solves it (`solve`, `conflict`, `change`),
//! and further loads of the oven (`loads`).

mod change;
mod conditions;
mod conflict;
mod cost;
mod course;
mod edit;
mod error;
mod forwards;
mod hand_time;
mod loads;
mod order;
mod search;
mod solve;
mod step;
mod usual;
mod weighing;

pub use change::Change;
pub use conditions::{Around, Done, Span};
pub use conflict::Conflict;
pub use edit::{Edit, edited};
pub use error::PlanError;
pub use hand_time::{SCALDING, hands_between};
pub use loads::Loads;
pub use order::Plan;
pub use solve::{Aim, Solved, Timed, solutions, solve};
pub use step::{DurationRange, Step, StepAt, StepKind};
pub use usual::{Times, shaping_time, usual};
pub use weighing::weighed_at;
