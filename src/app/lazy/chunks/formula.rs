//! What Formula shows below the cards of its parts.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry, chunk_view};
use crate::app::page::FormulaRest;
use crate::app::part::TrialBar;

/// What the chunk holds.
pub struct FormulaChunk {
    rest: Draw,
    trial_bar: Draw,
}

#[wasm_split(formula, wasm_split_path = ::leptos::wasm_split, fallible)]
fn formula() -> Entry<FormulaChunk> {
    Ok(FormulaChunk {
        rest: || view! { <FormulaRest /> }.into_any(),
        trial_bar: || view! { <TrialBar /> }.into_any(),
    })
}

/// The cards of Formula below those of the parts, drawn in the frame after these.
pub fn formula_rest() -> AnyView {
    chunk_view!(formula.rest)
}

/// The bar of a trial.
pub fn trial_bar() -> AnyView {
    chunk_view!(formula.trial_bar)
}
