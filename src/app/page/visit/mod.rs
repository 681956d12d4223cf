//! A visit: what a student needs of a shared formula, with nothing to set up.

mod cards;
mod help;
mod how_many;
mod notice;
mod steps;

pub use cards::{StepList, VisitCards};
pub use help::{NotYetForTin, OwnTin, WeighingHelp};
pub use notice::VisitNotice;
pub use steps::VisitSteps;
