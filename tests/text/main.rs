//! Numbers and sentences: reading, formatting, messages.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that fails should say where"
)]
#![allow(clippy::too_many_lines, reason = "a table is one thing, however long")]
#![allow(
    clippy::disallowed_methods,
    reason = "generated sizes need not agree with the phone's"
)]

mod allergens;
mod bench;
mod bench_card;
mod bench_lines;
mod bench_noted;
mod bench_steps;
mod bench_waits;
#[path = "../properties/cases.rs"]
mod cases;
mod cautions;
mod cautions_of_chocolate;
mod class;
mod corrections;
mod day_answers;
mod days;
mod dough_figures;
mod errors;
mod errors_of_files;
mod errors_of_reading;
mod flow_drawing;
mod format_options;
mod formula_page;
mod heat;
mod import_report;
mod kitchens_table;
mod labels;
mod language;
mod learnt_oven;
mod loads;
mod mixing;
mod names;
mod of_source;
mod one_answer;
mod one_dough;
mod one_story;
mod paper_below_scale;
mod paper_fit;
mod paste_conflicts;
mod pictures;
mod plain_speech;
mod preferment_conflicts;
mod reading;
mod reading_anything;
mod reading_others;
mod ready;
mod ribbon;
mod round_trip;
mod run_table;
mod scaled_bake;
mod shared;
mod shopping;
mod tins;
mod tongues;
mod units;
mod weighing;
mod whole_examples;
mod working;
mod writing;
#[path = "../published/written_table.rs"]
mod written_table;
