//! Numbers and sentences: what was typed and what came of it.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that fails should say where"
)]

mod manners;
mod reading;
mod round_trip;
mod units;
mod writing;
