//! Cautions: what to know, what to do, and the source.

mod advice;
mod batch;
mod chocolate;
mod formula;
mod rounding;
mod safety;
mod seizing;

pub(in crate::text) use advice::celsius;

pub use advice::Advice;
pub use batch::batch;
pub use chocolate::{fill, keeping, minimum_water, syrup, syrup_title};
pub use formula::{formula, formula_answer, formula_title};
pub use rounding::{below_scale, rounding};
pub use safety::{Hazard, LOCAL_RULES, safety, safety_line};
pub use seizing::{from_seizing, seized};
