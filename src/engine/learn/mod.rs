//! Learning: what the bakes of a kitchen teach about its mixer, its losses, its rises and its oven.
//!
//! In reading order: what a bake noted (`noted`), the middle of several entries of which one may
//! be wild (`middle`), what is learnt (`learnt`), what it rests on (`rests`).

mod evidence;
mod learnt;
mod observation;
mod robust_mean;

pub use evidence::{Entry, Evidence};
pub use learnt::{Learnt, LearntFactor, LearntRate, LearntShare, learn};
pub use observation::{MeasuredDuration, Observation, Weighed};
