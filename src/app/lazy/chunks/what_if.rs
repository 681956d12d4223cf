//! The what-if sheet, which follows the run of the dough.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::Entry;
use crate::app::lazy::lazy_view::{lazy_view, now_or_never};
use crate::app::lazy::records;
use crate::app::page::WhatIfSheet;
use crate::engine::formula::Figure;

/// What the chunk holds.
pub struct WhatIfChunk {
    sheet: fn(Figure) -> AnyView,
}

#[wasm_split(what_if, wasm_split_path = ::leptos::wasm_split, fallible)]
fn what_if_chunk() -> Entry<WhatIfChunk> {
    Ok(WhatIfChunk {
        sheet: |figure| view! { <WhatIfSheet figure /> }.into_any(),
    })
}

/// Tries a figure of the dough.
pub fn what_if(figure: Figure) -> AnyView {
    lazy_view(
        || Box::pin(async { records::load().await && what_if_chunk().await.is_ok() }),
        Box::new(move || {
            if !records::are_here() {
                return None;
            }
            let chunk = now_or_never(what_if_chunk())?.ok()?;
            Some((chunk.sheet)(figure))
        }),
        || (),
    )
}
