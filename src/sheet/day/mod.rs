//! The day: what is wished of a plan, the bake under way, and the log of bakes.

mod bake;
mod bench;
mod log;
mod observed;
mod planned;
mod wishes;

pub use bake::{Bake, DoneStep};
pub use bench::{Bench, Timer, Weighing};
pub use log::{Log, Resets};
pub use observed::{as_weighed, note_bread, note_dough, note_times, unmixed};
pub use planned::{DayAsked, Planned, open_table, planned};
pub use wishes::{DayWishes, Fridge, Sleep, Target};
