//! Softcrumb: a calculator for soft, enriched bread.
//!
//! Read in this order. Each layer may name the ones above it in this list, never those below.
//!
//! 1. [`engine`]: the arithmetic and the physics. No web, clock, randomness or sentences.
//! 2. [`sheet`]: what is stored: formulas, kitchen and batch as typed data.
//! 3. [`storage`]: how it is stored and sent: records, links, files, import and export.
//! 4. [`results`]: what follows from a sheet and a kitchen, as pure functions, one module a place.
//! 5. [`text`]: numbers and sentences: reading what was typed, writing figures, saying what is wrong.
//! 6. `app`: the page, compiled for WebAssembly only.

#![cfg_attr(app_on_host, recursion_limit = "512")]

pub mod engine;
pub mod results;
pub mod sheet;
pub mod storage;
pub mod text;

#[cfg(any(target_arch = "wasm32", app_on_host))]
pub mod app;
