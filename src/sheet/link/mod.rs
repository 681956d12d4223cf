//! Links: one sheet as a short text for the part of an address behind `#`, which no server sees.
//!
//! `write` packs a sheet, seals it with length and checksum, and spells it in letters, digits,
//! `-` and `_`. `read` undoes that and takes nothing on trust.

mod choice;
mod error;
mod frame;
mod heat;
mod number;
mod own;
mod packed;
mod tin;
mod unpack;

pub use error::LinkError;
pub use frame::{LONGEST, VERSION};

use super::Sheet;

/// Writes a sheet as the text of a link.
///
/// # Errors
/// [`LinkError::TooLong`] when the sheet needs more than [`LONGEST`] characters.
pub fn write(sheet: &Sheet) -> Result<String, LinkError> {
    frame::close(&body(sheet)?)
}

fn body(sheet: &Sheet) -> Result<Vec<u8>, LinkError> {
    let packed = packed::Packed::of(sheet);
    postcard::to_allocvec(&packed).map_err(|_| LinkError::Damaged)
}

/// How many characters the text of a sheet's link would have, however many that are.
#[must_use]
pub fn length(sheet: &Sheet) -> usize {
    body(sheet).map_or(0, |body| frame::spelt(&body).len())
}

/// Reads the text of a link.
///
/// # Errors
/// [`LinkError`] for anything that [`write()`] has not written.
pub fn read(text: &str) -> Result<Sheet, LinkError> {
    let body = frame::open(text)?;
    match postcard::take_from_bytes::<packed::Packed>(&body) {
        Ok((packed, [])) => unpack::sheet(packed),
        Ok(_) | Err(_) => Err(LinkError::Damaged),
    }
}
