//! The day in sentences: steps, rises, conflicts, the bench, corrections, the log.

mod adjustment;
mod answer;
mod before_mixing;
mod bench;
mod bench_ahead;
mod bench_lasting;
mod bench_oven;
mod bench_pieces;
mod bench_step;
mod bench_wait;
mod calendar;
mod conflict;
mod corrections;
mod dough;
mod learnt;
mod loads;
mod log;
mod not_ready;
mod path;
mod preferment;
mod ready;
mod rise;
mod start_now;
mod step;

pub use adjustment::{adjustment, bedtime};
pub use answer::{
    days_title, fridge_answer, known_answer, learnt_answer, log_answer, rise_answer, start_label,
    steps_answer, table_label, taught_rises, when_answer,
};
pub use before_mixing::before_mixing;
pub use bench::{addition, done, dough_deviation, timer, weighing_effect};
pub use bench_lasting::{listed_sentence, numbered_steps, running_sentence};
pub use bench_step::{bench_meanwhile, bench_note, bench_sentence, expected_dough};
pub use bench_wait::{
    all_of_part, crust, findings, in_the_bowl, nothing_until, step_number, summary_figure,
    summary_name, underbaked,
};
pub use calendar::calendar_events;
pub use conflict::{change, conflict, paste_conflict, paste_cure, ready_later, what_solves};
pub use corrections::{
    duration_changes, found_warmth, ice_for, part_warmth, ready_change, rise_deviation, rise_place,
    start_deviation, wait_for,
};
pub use dough::yeast_activity;
pub use learnt::{
    LearntFigure, evidence, friction_offer, learnt_figures, observations, oven, trust,
};
pub use loads::{bake_difference, class_loads, load_waits, loads};
pub use log::{
    bake_waits, baked_on, log_imported, not_a_picture, other_bake, photo_gone, photo_of,
    photo_stored, photo_too_large, photos_full, picture_broken, weighed_otherwise,
};
pub use not_ready::{not_before, not_ready};
pub use path::{bulk, path_working, rise_working};
pub use preferment::{preferment_conflict, preferment_cure, preferment_rise, preferment_working};
pub use ready::{ready, ready_between, ready_moved, table_working};
pub use rise::{basis, rise_begins, rise_difference, rise_range, signs};
pub use start_now::start_now;
pub use step::{StepLine, caution_of, first_of_day, step_line};
