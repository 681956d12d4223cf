//! Ingredients of the user's own: what is taken, what is refused, and that every answer stands.

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
