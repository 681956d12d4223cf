//! The structure of the source: layers, circles, signatures, rules for files.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::wildcard_enum_match_arm,
    reason = "a test that fails should say where"
)]

mod circles;
mod files;
mod layers;
mod modules;
mod page;
mod signatures;
mod style;
