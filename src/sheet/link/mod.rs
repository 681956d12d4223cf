//! Links: one sheet as a short text for the part of an address behind `#`, which no server sees.
//!
//! `write` packs a sheet, seals it with length and checksum, and spells it in letters, digits,
//! `-` and `_`. `read` undoes that and takes nothing on trust.

mod choice;
mod error;
mod heat;
mod number;
mod own;
mod packed;
mod seal;
mod tin;
mod unpack;

pub use error::LinkError;
pub use seal::{LONGEST, VERSION};

use super::kept::Sheet;

/// Writes a sheet as the text of a link.
///
/// # Errors
/// [`LinkError::TooLong`] when the sheet needs more than [`LONGEST`] characters.
pub fn write(sheet: &Sheet) -> Result<String, LinkError> {
    let packed = packed::Packed::of(sheet);
    let body = postcard::to_allocvec(&packed).map_err(|_| LinkError::Damaged)?;
    seal::close(&body)
}

/// Reads the text of a link.
///
/// # Errors
/// [`LinkError`] for anything that [`write()`] has not written.
pub fn read(text: &str) -> Result<Sheet, LinkError> {
    let body = seal::open(text)?;
    match postcard::take_from_bytes::<packed::Packed>(&body) {
        Ok((packed, [])) => unpack::sheet(packed),
        Ok(_) | Err(_) => Err(LinkError::Damaged),
    }
}
