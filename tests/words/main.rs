//! Numbers and sentences: what was typed and what came of it.
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

mod bench;
mod cautions;
mod cautions_of_chocolate;
mod class_told;
mod days;
mod filed;
mod flow_drawing;
mod formula_page;
mod handed_out;
mod heat;
mod language;
mod loads;
mod made_up;
mod manners;
mod names;
mod paper_fit;
mod pictures;
mod plain_speech;
mod reading;
mod reading_anything;
mod reading_others;
mod round_trip;
mod troubles;
mod troubles_of_files;
mod troubles_of_reading;
mod units;
mod weighing;
mod whole_examples;
mod working;
mod writing;
