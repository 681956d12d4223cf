//! Errors about tins.

use std::num::NonZeroU16;

use crate::engine::quantity::OutOfRange;

/// Why a figure of a tin cannot be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TinError {
    /// A tray has no sides, so nothing says how much dough it holds.
    #[error("a tray has no room of its own")]
    NoSides,
    /// The tube of a ring leaves no room at the bottom.
    #[error("the tube fills the tin")]
    TubeFillsTin,
    /// The bottom is larger than the rim.
    #[error("the bottom is larger than the rim")]
    BottomOverRim,
    /// The dough weighs nothing.
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
    /// An answer outside the range of its quantity.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
