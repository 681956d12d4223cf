//! The day: rises, steps with their times, the bench, and what corrects a bake that goes otherwise.

mod corrections;
mod day_results;
mod observed;
mod rise_place;
mod rises;
mod weighing;

pub use corrections::{RiseOff, gives, promise, rise_off};
pub use day_results::{DayAsked, Planned, open_table, planned};
pub use observed::{as_weighed, note_bread, note_dough, note_times, unmixed};
pub use rise_place::{RisePlace, WhichRise, rise_place};
pub use rises::{Known, Night, Rising, night, rising};
pub use weighing::{AddMore, add_more, warmed_by_weights};
