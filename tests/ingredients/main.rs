//! The user's own ingredients: which labels are accepted, which are refused, and that every answer is valid.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "helpers of a test binary are not 'in tests' to clippy"
)]

#[path = "../properties/cases.rs"]
mod cases;
mod every_label;
mod labels;
mod numbers;
mod refused;
