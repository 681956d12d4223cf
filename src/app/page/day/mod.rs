//! Day: when? The plan over two days, the rises, the bench, the log.

mod active_bake;
mod began_box;
mod bench_start;
mod bench_view;
mod conflicts;
mod corrections;
mod field;
mod fields;
mod key_figures;
mod learnt_card;
mod loads_box;
mod log_card;
mod log_files;
mod measures;
mod paste_conflicts;
mod photo_box;
mod photos;
mod place;
mod ready_line;
mod results;
mod ribbon_card;
mod rise_card;
mod step_row;
mod steps_card;
mod warmth_boxes;
mod weigh_rows;
mod when_card;

pub use active_bake::watch_timers;
pub use key_figures::DayKeys;
pub use place::day_place;
pub use results::Day;
