//! Records are read as they were written; damaged ones are reported, never believed.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::float_cmp,
    clippy::as_conversions,
    clippy::integer_division,
    clippy::string_slice,
    reason = "tests stop where something is wrong"
)]

mod bench;
mod bench_course;
mod bench_found;
mod bench_noted;
mod bench_results;
#[path = "../properties/cases.rs"]
mod cases;
mod civil;
mod classes;
mod cooling;
mod corrections;
mod days;
mod drawn;
mod drawn_class;
mod drawn_heat;
mod examples;
mod few_minutes;
mod files_out;
mod fragment;
mod frozen;
mod frozen_files;
mod full;
mod full_days;
mod history;
mod hostile_days;
mod hostile_links;
mod hostile_records;
mod household;
mod in_hand;
mod kitchen_taught;
mod kitchens;
mod known_dough;
mod links;
mod log_files;
mod not_ready;
mod observed;
mod one_tap;
mod paste_conflicts;
mod plain;
mod recipes;
mod recipes_elsewhere;
mod records;
mod reorder;
mod run_taught;
mod samples;
mod shelf;
mod square_codes;
mod starts_now;
mod step_corrections;
mod tables;
mod trial_changes;
mod trials;
mod untouched;
mod weighed_otherwise;
mod workspace;
mod written;
