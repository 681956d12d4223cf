//! The class: who makes how much at which bench, in which bowls, and when the oven takes it.

mod bench;
mod bowls;
mod error;
mod oven;
mod portions;
mod settings;
mod sum;
mod teacher_bowl;
mod working;

pub use bench::{BenchBatch, Class, class};
pub use bowls::{BowlNeed, bowls};
pub use error::ClassError;
pub use oven::{Load, OvenPlan, oven};
pub use portions::{BowlPortion, portions};
pub use settings::{Ahead, ClassSettings, OvenSettings};
pub use sum::sum;
