//! What can be wrong with a link.

use crate::engine::ingredients::LabelError;
use crate::engine::quantity::OutOfRange;

/// A link that cannot be opened, or a sheet that no link can hold.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LinkError {
    /// There is nothing in it.
    #[error("empty")]
    Empty,
    /// It holds characters that no link of ours has.
    #[error("not a link of ours")]
    NotALink,
    /// More characters than are read, or could be written, at all.
    #[error("{characters} characters, more than {most}")]
    TooLong {
        /// How many it has.
        characters: usize,
        /// The most there may be.
        most: usize,
    },
    /// Cut short, or changed on the way.
    #[error("damaged")]
    Damaged,
    /// Written by a later release than this one.
    #[error("version {version} is newer than this release")]
    Newer {
        /// Its version.
        version: u8,
    },
    /// An ingredient that this release does not know.
    #[error("no ingredient has the number {number}")]
    UnknownIngredient {
        /// Its number.
        number: u16,
    },
    /// A number outside the range of its quantity.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A label of an own ingredient that cannot be true.
    #[error(transparent)]
    Label(#[from] LabelError),
    /// More parts or lines than a formula may have.
    #[error("more parts or lines than a formula may have")]
    TooMany,
}
