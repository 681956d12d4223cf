//! The house keeps its plan: layers, first lines, lengths, names, and words that may not stay.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test that fails should say where"
)]

mod circles;
mod files;
mod layers;
mod modules;
mod page;
mod signatures;
mod style;
