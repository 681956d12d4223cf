//! Learning: what the bakes of a kitchen teach about its mixer, its losses, its rises and its oven.
//!
//! In reading order: what a bake noted (`observation`), what is learnt (`learnt`; of small
//! differences, `measured`), what it rests on (`evidence`).

mod evidence;
mod learnt;
mod measured;
mod observation;

pub use evidence::{Entry, Evidence};
pub use learnt::{DoubtedRate, Learnt, LearntFactor, LearntRate, LearntShare, learn};
pub use observation::{MeasuredCooling, MeasuredDuration, MeasuredSteam, Observation, WeighedLoss};
