//! A box that may be left empty.

use super::ReadError;
use crate::text::FormatOptions;

/// Reads a text with `read`; gives `None` for an empty one.
///
/// # Errors
/// Those of `read`, except [`ReadError::Empty`].
pub fn optional<T>(
    text: &str,
    options: FormatOptions,
    read: fn(&str, FormatOptions) -> Result<T, ReadError>,
) -> Result<Option<T>, ReadError> {
    match read(text, options) {
        Ok(value) => Ok(Some(value)),
        Err(ReadError::Empty) => Ok(None),
        Err(error) => Err(error),
    }
}
