//! Links are read and written by a chunk, because most visits need neither.

use super::chunks::storage::{LinkChunk, links};
use super::lazy_view::now_or_never;
use crate::sheet::Sheet;
use crate::storage::link::LinkError;

/// Loads what reads and writes links; `false` where that fails.
pub async fn load() -> bool {
    links().await.is_ok()
}

fn chunk() -> Option<LinkChunk> {
    now_or_never(links())?.ok()
}

/// Reads the text of a link; none where the chunk is not loaded.
pub fn read(text: &str) -> Option<Result<Sheet, LinkError>> {
    Some((chunk()?.read)(text))
}

/// Writes the text of a link; none where the chunk is not loaded.
pub fn write(sheet: &Sheet) -> Option<Result<String, LinkError>> {
    Some((chunk()?.write)(sheet))
}
