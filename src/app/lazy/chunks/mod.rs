//! Chunks: one file each, with the entry at which the build splits the binary and its value.
#![allow(
    unsafe_code,
    reason = "the entry of a chunk is a symbol of the binary, written by the attribute; nothing here is unsafe by hand"
)]

pub mod batch;
pub mod chocolate;
pub mod day;
pub mod dialogs;
pub mod formula;
pub mod formula_rows;
pub mod heat;
pub mod storage;
pub mod visit;
pub mod what_if;

use leptos::prelude::AnyView;
use leptos::wasm_split::SplitLoaderError;

/// The value of an entry, unless its chunk could not be loaded.
type Entry<T> = Result<T, SplitLoaderError>;

/// Draws a view of a chunk.
type Draw = fn() -> AnyView;

/// A place with its key figures.
pub struct PlaceChunk {
    place: Draw,
    key_figures: Draw,
}

/// A view of a chunk: its entry, the function that draws it, and what is done where it had to be
/// waited for.
macro_rules! chunk_view {
    ($entry:ident.$draw:ident) => {
        chunk_view!($entry.$draw, || ())
    };
    ($entry:ident.$draw:ident, $arrived:expr) => {
        crate::app::lazy::lazy_view::lazy_view(
            || Box::pin(async { $entry().await.is_ok() }),
            Box::new(|| {
                let chunk = crate::app::lazy::lazy_view::now_or_never($entry())?.ok()?;
                Some((chunk.$draw)())
            }),
            $arrived,
        )
    };
}
use chunk_view;
