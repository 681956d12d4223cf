//! One run of one dough: a bake followed from the kettle to the cutting board.
//!
//! Each stage begins with the temperature at which the one before it ends. Heat, Day, the bench and
//! the worksheet read the same run, so that a figure shown in two places is one number.

mod chilled;
mod plan_times;
mod run_input;
mod run_results;
mod stage;
mod stages;

pub use plan_times::{PartTimes, PlanTimes};
pub use run_input::{DoughBasis, RunInput};
pub use run_results::Run;
pub(crate) use stage::between;
pub use stage::{Stage, StageKind, strands};
