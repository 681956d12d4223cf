//! The batch: how much of a formula is made, weighed on which scale, divided into what.

mod as_formula;
mod divide;
mod error;
mod figure;

mod round;
mod round_working;
mod scale;
mod scale_working;
mod target;
mod target_kind;
mod weighing_aid;
mod yields;

pub use divide::{Divided, Portion, divide};
pub use error::BatchError;
pub use figure::BatchFigure;
pub use round::{Rounded, RoundedLine, ScaleReading, ScaleSettings, round, round_sum};
pub use scale::{BatchCaution, Pieces, Scaled, scale};
pub use target::{BatchTarget, Losses};
pub use target_kind::TargetKind;
pub use weighing_aid::{PocketScale, SolutionAid, WeighingAids, YeastSolution};
pub use yields::FactorBasis;
