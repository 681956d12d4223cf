//! Links are read and written by a chunk, because most visits need neither.

use super::records::chunk;
use crate::sheet::Sheet;
use crate::storage::link::LinkError;

pub use super::records::load;

/// Reads the text of a link; none where the chunk is not loaded.
pub fn read(text: &str) -> Option<Result<Sheet, LinkError>> {
    Some((chunk()?.read_link)(text))
}

/// Writes the text of a link; none where the chunk is not loaded.
pub fn write(sheet: &Sheet) -> Option<Result<String, LinkError>> {
    Some((chunk()?.write_link)(sheet))
}
