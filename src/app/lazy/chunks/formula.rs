//! What Formula shows below the cards of its parts.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry, chunk_view};
use crate::app::lazy::lazy_view::{lazy_view, now_or_never};
use crate::app::page::{FormulaRest, PartShares};

/// What the chunk holds.
pub struct FormulaChunk {
    rest: Draw,
    part_shares: fn(usize) -> AnyView,
}

#[wasm_split(formula, wasm_split_path = ::leptos::wasm_split, fallible)]
fn formula() -> Entry<FormulaChunk> {
    Ok(FormulaChunk {
        rest: || view! { <FormulaRest /> }.into_any(),
        part_shares: |part| view! { <PartShares part /> }.into_any(),
    })
}

/// The cards of Formula below those of the parts, drawn in the frame after these.
pub fn formula_rest() -> AnyView {
    chunk_view!(formula.rest)
}

/// The settings of a part that is made ahead.
pub fn part_shares(part: usize) -> AnyView {
    lazy_view(
        || Box::pin(async { formula().await.is_ok() }),
        Box::new(move || {
            let chunk = now_or_never(formula())?.ok()?;
            Some((chunk.part_shares)(part))
        }),
        || (),
    )
}
