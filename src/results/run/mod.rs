//! One run of one dough: a bake followed from the kettle to the cutting board.
//!
//! Each stage begins with the temperature at which the one before it ends. Heat, Day, the bench and
//! the worksheet read the same run, so that a figure shown in two places is one number.

mod chilled;
mod run_results;
mod stage;

pub(crate) use run_results::between;
pub use run_results::{DoughBasis, Run, RunInput};
pub use stage::{Stage, StageKind, strands};
