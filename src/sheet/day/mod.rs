//! The day: what is wished of a plan, the bake under way, and the log of bakes.

mod bake;
mod bench;
mod log;
mod made_up;
mod observed;
mod planned;
mod weighed_again;
mod wishes;

pub use bake::{Bake, DoneStep};
pub use bench::{Bench, Measured, Promised, Timer, Weighing};
pub use log::{Log, Resets, TakenIn};
pub use made_up::{RiseOff, gives, promise, rise_off};
pub use observed::{as_weighed, note_bread, note_dough, note_times, unmixed};
pub use planned::{DayAsked, Planned, open_table, planned};
pub use weighed_again::{AddMore, add_more, warmed_by_weights};
pub use wishes::{DayWishes, Fridge, Sleep, Target};
