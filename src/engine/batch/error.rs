//! Errors of scaling and dividing a batch.

use std::num::NonZeroU32;

use crate::engine::formula::LineAt;
use crate::engine::quantity::{Division, Mass, OutOfRange, Share};

/// Why a batch cannot be scaled or divided.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum BatchError {
    /// Flour is on hand, but the formula holds none.
    #[error("the formula holds no flour")]
    NoFlour,
    /// The formula's dough weighs nothing.
    #[error("the formula holds no dough")]
    NoDough,
    /// The formula has no line `at`.
    #[error("no line at {at:?}")]
    NotInFormula {
        /// The line that the target names.
        at: LineAt,
    },
    /// The formula holds none of the ingredient on hand.
    #[error("the formula holds none of the ingredient at {at:?}")]
    NoneInFormula {
        /// The line that the target names.
        at: LineAt,
    },
    /// Nothing would be left to divide.
    #[error("losses of {residue:?} and {share:?} take all of {mixed:?}")]
    LossesTakeAll {
        /// Dough that would be mixed, as far as it is known.
        mixed: Option<Mass>,
        /// Left in bowls and on hands, whatever the batch.
        residue: Mass,
        /// The shares lost before and at dividing, together.
        share: Share,
    },
    /// The dough is too little for a division of the scale a piece.
    #[error("{dough:?} is less than {pieces} times {division:?}")]
    TooLittleToDivide {
        /// The dough.
        dough: Mass,
        /// The pieces wanted.
        pieces: NonZeroU32,
        /// The scale's division.
        division: Division,
    },
    /// A batch too small or too large to be weighed.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
