//! The dialogs, and the comparison, which reads the records of other formulas as they do.

use leptos::prelude::*;
use leptos::wasm_split::wasm_split;

use super::{Draw, Entry};
use crate::app::dialog::DialogContent;
use crate::app::lazy::lazy_view::{lazy_view, now_or_never};
use crate::app::lazy::records;
use crate::app::page::Compare;
use crate::app::state::DialogKind;

/// What the chunk holds.
pub struct DialogChunk {
    content: fn(DialogKind) -> AnyView,
    compare: Draw,
}

#[wasm_split(dialogs, wasm_split_path = ::leptos::wasm_split, fallible)]
fn dialogs() -> Entry<DialogChunk> {
    Ok(DialogChunk {
        content: |opened| view! { <DialogContent opened /> }.into_any(),
        compare: || view! { <Compare /> }.into_any(),
    })
}

/// The content of the open dialog.
pub fn dialog(opened: DialogKind) -> AnyView {
    with_records(move |chunk| (chunk.content)(opened.clone()))
}

/// The open formula beside another one.
pub fn compare() -> AnyView {
    with_records(|chunk| (chunk.compare)())
}

/// A view of the chunk, drawn once records can be read, too.
fn with_records(draw: impl Fn(DialogChunk) -> AnyView + Send + 'static) -> AnyView {
    lazy_view(
        || Box::pin(async { records::load().await && dialogs().await.is_ok() }),
        Box::new(move || {
            if !records::are_here() {
                return None;
            }
            now_or_never(dialogs())?.ok().map(&draw)
        }),
        || (),
    )
}
