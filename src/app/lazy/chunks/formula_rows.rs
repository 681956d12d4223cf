//! What rows of Formula open to, and the bar of a trial.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry, chunk_view};
use crate::app::page::{WaterContent, WhatIfContent};
use crate::app::part::TrialBar;

/// What the chunk holds.
pub struct FormulaRowsChunk {
    water: Draw,
    what_if: Draw,
    trial_bar: Draw,
}

#[wasm_split(formula_rows, wasm_split_path = ::leptos::wasm_split, fallible)]
fn formula_rows() -> Entry<FormulaRowsChunk> {
    Ok(FormulaRowsChunk {
        water: || view! { <WaterContent /> }.into_any(),
        what_if: || view! { <WhatIfContent /> }.into_any(),
        trial_bar: || view! { <TrialBar /> }.into_any(),
    })
}

/// Where the water comes from.
pub fn water_content() -> AnyView {
    chunk_view!(formula_rows.water)
}

/// Trials that are one tap away, and targets.
pub fn what_if_content() -> AnyView {
    chunk_view!(formula_rows.what_if)
}

/// The bar of a trial.
pub fn trial_bar() -> AnyView {
    chunk_view!(formula_rows.trial_bar)
}
