//! What can keep a batch from being worked out.

use std::num::NonZeroU32;

use crate::engine::formula::LineAt;
use crate::engine::quantity::{Division, Mass, OutOfRange, Share};

/// Why there is no answer about a batch.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum BatchError {
    /// Flour is on hand, but the formula holds none.
    #[error("the formula holds no flour")]
    NoFlour,
    /// The formula's dough weighs nothing.
    #[error("the formula holds no dough")]
    NoDough,
    /// No line stands where the ingredient on hand was said to be.
    #[error("no line stands at {at:?}")]
    NotInFormula {
        /// Where a line was looked for.
        at: LineAt,
    },
    /// The formula asks for none of the ingredient on hand.
    #[error("the formula asks for none of what stands at {at:?}")]
    NoneInFormula {
        /// Where it stands.
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
        /// The dough there is.
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
