//! Day: when? The plan over two days, the rises, the bench, the log.

mod answers;
mod bench_view;
mod benched;
mod field;
mod fields;
mod learnt_card;
mod loads_box;
mod log_card;
mod measures;
mod place;
mod ribbon_card;
mod rise_card;
mod step_row;
mod steps_card;
mod weigh_rows;
mod when_card;

pub use place::day_place;
