//! The day: what is wished of a plan, the bake under way, and the log of bakes.

mod bake;
mod bench;
mod corrections;
mod log;
mod observed;
mod planned;
mod settings;
mod weighed_again;

pub use bake::{Bake, DoneStep};
pub use bench::{Bench, Measured, PlanSnapshot, Timer, Weighing};
pub use corrections::{RiseOff, gives, promise, rise_off};
pub use log::{Log, LogImport, Resets};
pub use observed::{as_weighed, note_bread, note_dough, note_times, unmixed};
pub use planned::{DayAsked, Planned, open_table, planned};
pub use settings::{DaySettings, Fridge, Sleep, Target};
pub use weighed_again::{AddMore, add_more, warmed_by_weights};
