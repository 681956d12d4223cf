//! Day: when? The plan over two days, the rises, the bench, the log.

mod answers;
mod began_box;
mod bench_view;
mod benched;
mod field;
mod fields;
mod in_the_way;
mod kept;
mod keys;
mod learnt_card;
mod loads_box;
mod log_card;
mod log_files;
mod make_ups;
mod measures;
mod photo_box;
mod photos;
mod place;
mod ribbon_card;
mod rise_card;
mod step_row;
mod steps_card;
mod warmth_boxes;
mod weigh_rows;
mod when_card;

pub use benched::watch_timers;
pub use keys::DayKeys;
pub use place::day_place;
