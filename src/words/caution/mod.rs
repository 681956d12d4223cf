//! Cautions: what to know before going on, what to do about it, and who says so.

mod advice;
mod formula;
mod safety;

pub use advice::Advice;
pub use formula::formula;
pub use safety::{LOCAL_RULES, Step, safety};
