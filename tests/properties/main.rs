//! Sweeps and properties: every function answers for every argument, and what is held stays held.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "helpers of a test binary are not 'in tests' to clippy"
)]

mod bakes;
mod batch;
mod batch_rounding;
mod batch_ways;
mod batches;
mod cases;
mod chocolate_sides;
mod class_sums;
mod classes;
mod dough;
mod dough_ways;
mod formula_edits;
mod formula_figures;
mod formula_parts;
mod formula_refusals;
mod heat;
mod heat_answers;
mod heat_cases;
mod heat_ends;
mod heat_of_formula;
mod kitchen;
mod learn;
mod learn_measured;
mod link;
mod numerics;
mod plan;
mod plan_by_force;
mod plan_cases;
mod plan_loads;
mod plan_usual;
mod quantities;
mod ready;
mod remedies_taken;
mod rise;
mod run;
mod run_in_plan;
mod syrup;
mod tins;
