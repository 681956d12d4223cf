//! Softcrumb: a calculator for soft, enriched bread.
//!
//! Read in this order. Each layer may name the ones above it in this list, never those below.
//!
//! 1. [`engine`]: the arithmetic and the physics. No web, clock, randomness or sentences.
//! 2. [`sheet`]: what is kept: formulas, kitchen and batch as typed data, records and links.
//! 3. [`words`]: numbers and sentences: reading what was typed, writing figures, saying what is wrong.
//! 4. `app`: the page, compiled for WebAssembly only.

pub mod engine;
pub mod sheet;
pub mod text;

#[cfg(any(target_arch = "wasm32", app_on_host))]
pub mod app;
