//! Every line of working adds up: its rule, with the numbers put in, gives its answer.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "helpers of a test binary are not 'in tests' to clippy"
)]

mod batch;
mod chocolate;
mod class;
mod formula;
mod heat;
mod learn;
mod nutrition;
mod rise;
mod rule_evaluator;
mod tin;
