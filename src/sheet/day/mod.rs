//! The day as it is stored: settings of the plan, the bake under way, the log of bakes.

mod bake;
mod bench;
mod findings;
mod log;
mod settings;

pub use bake::{Bake, DoneStep};
pub use bench::{Bench, Measured, PlanSnapshot, Timer, Weighing};
pub use findings::{Crust, Findings, WeighedOtherwise};
pub use log::{Log, LogImport, Resets};
pub use settings::{DaySettings, Fridge, Sleep, Target};
