//! What can keep a tin from being worked out.

use std::num::NonZeroU16;

use crate::engine::quantity::OutOfRange;

/// Why there is no answer about a tin.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TinError {
    /// A tray has no sides, so nothing says how much dough it holds.
    #[error("a tray has no room of its own")]
    NoSides,
    /// The tube of a ring leaves no room at the bottom.
    #[error("the tube fills the tin")]
    TubeFillsTin,
    /// There is no dough to speak of.
    #[error("no dough")]
    NoDough,
    /// More pieces than are laid out and drawn.
    #[error("{pieces} pieces are more than {most}")]
    TooManyPieces {
        /// What was asked for.
        pieces: NonZeroU16,
        /// The most there may be.
        most: u16,
    },
    /// An answer too small or too large to be true.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
