//! Links: one sheet as a short text for the fragment of an address, which no server receives.
//!
//! `write` packs a sheet, frames it with version, length and checksum, and spells it in letters,
//! digits, `-` and `_`. `read` undoes that and takes nothing on trust.
//!
//! Each version has a layout of its own, which never changes. What is added later becomes the next
//! version: the layout before it, and the new fields behind. Variants have numbers of their own.

mod choice;
mod cooling;
mod error;
mod frame;
mod heat;
mod number;
mod own;
mod packed;
mod second_version;
mod tagged;
mod tin;
mod unpack;

#[cfg(test)]
mod next;

pub use error::LinkError;
pub use frame::LONGEST;

use crate::sheet::Sheet;

/// The newest version: written where the first does not hold all of the sheet.
pub const VERSION: u8 = 2;

/// Reads the body of one version.
type Layout<T> = fn(&[u8]) -> Result<T, LinkError>;

/// The layouts of all versions, the first version first.
const LAYOUTS: [Layout<Sheet>; 2] = [first, second];

/// Writes a sheet as the text of a link.
///
/// # Errors
/// [`LinkError::TooLong`] when the sheet needs more than [`LONGEST`] characters.
pub fn write(sheet: &Sheet) -> Result<String, LinkError> {
    let (version, body) = body(sheet)?;
    frame::close(version, &body)
}

/// The version that holds all of the sheet, and its body.
fn body(sheet: &Sheet) -> Result<(u8, Vec<u8>), LinkError> {
    let (version, body) = match second_version::Second::of(sheet) {
        Some(second) => (VERSION, postcard::to_allocvec(&second)),
        None => (1, postcard::to_allocvec(&packed::Packed::of(sheet))),
    };
    Ok((version, body.map_err(|_| LinkError::Damaged)?))
}

/// How many characters the text of a sheet's link would have, however many that are.
#[must_use]
pub fn length(sheet: &Sheet) -> usize {
    body(sheet).map_or(0, |(version, body)| frame::spelt(version, &body).len())
}

/// Reads the text of a link.
///
/// # Errors
/// [`LinkError`] for anything that [`write()`] has not written.
pub fn read(text: &str) -> Result<Sheet, LinkError> {
    read_by(text, &LAYOUTS)
}

/// Reads a link by the layout of its version.
fn read_by<T>(text: &str, layouts: &[Layout<T>]) -> Result<T, LinkError> {
    let newest = u8::try_from(layouts.len()).unwrap_or(u8::MAX);
    let (version, body) = frame::open(text, newest)?;
    let place = usize::from(version).checked_sub(1);
    let layout = place.and_then(|place| layouts.get(place));
    layout.ok_or(LinkError::Damaged)?(&body)
}

/// The first version.
fn first(body: &[u8]) -> Result<Sheet, LinkError> {
    unpack::sheet(whole(body)?)
}

/// The second version.
fn second(body: &[u8]) -> Result<Sheet, LinkError> {
    whole::<second_version::Second>(body)?.sheet()
}

/// A body of which nothing is left over.
fn whole<'b, T: serde::Deserialize<'b>>(body: &'b [u8]) -> Result<T, LinkError> {
    match postcard::take_from_bytes(body) {
        Ok((packed, [])) => Ok(packed),
        Ok(_) | Err(_) => Err(LinkError::Damaged),
    }
}
