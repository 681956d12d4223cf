//! Links: reading and writing them is a piece of its own; most visits need neither.

use super::entry_points;
use super::lazy_view::at_once;
use crate::sheet::Sheet;
use crate::sheet::link::LinkError;

/// Loads what reads and writes links; whether it came.
pub async fn load() -> bool {
    entry_points::load_read_link().await.is_ok() && entry_points::load_write_link().await.is_ok()
}

/// Reads the text of a link; none where that is not loaded.
pub fn read(text: &str) -> Option<Result<Sheet, LinkError>> {
    at_once(entry_points::read_link(text))?.ok()
}

/// Writes the text of a link; none where that is not loaded.
pub fn write(sheet: &Sheet) -> Option<Result<String, LinkError>> {
    at_once(entry_points::write_link(sheet))?.ok()
}
