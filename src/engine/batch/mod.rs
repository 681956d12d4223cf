//! The batch: how much of a formula is made, weighed on which scale, divided into what.

mod cure;
mod divide;
mod error;
mod figure;
mod made;
mod round;
mod round_working;
mod scale;
mod scale_working;
mod wanted;
mod way;
mod yields;

pub use cure::{Cures, PocketScale, SolutionCure, YeastSolution};
pub use divide::{Divided, Portion, divide};
pub use error::BatchError;
pub use figure::BatchFigure;
pub use round::{Rounded, RoundedLine, Shown, Weighing, round};
pub use scale::{BatchCaution, Pieces, Scaled, scale};
pub use wanted::{Losses, Wanted};
pub use way::Way;
pub use yields::FactorBasis;
