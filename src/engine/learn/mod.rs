//! Learning: what the bakes of a kitchen teach about its mixer, its losses, its rises and its oven.
//!
//! In reading order: what a bake noted (`observation`), what is learnt (`learnt`), what it rests on
//! (`evidence`).

mod evidence;
mod learnt;
mod observation;

pub use evidence::{Entry, Evidence};
pub use learnt::{Learnt, LearntFactor, LearntRate, LearntShare, learn};
pub use observation::{MeasuredDuration, Observation, WeighedLoss};
