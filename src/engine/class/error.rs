//! Errors of a class.

use crate::engine::batch::BatchError;
use crate::engine::quantity::OutOfRange;

/// Why the figures of a class cannot be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ClassError {
    /// The batch of one bench has no answer.
    #[error(transparent)]
    Batch(#[from] BatchError),
    /// More oven loads than one day has.
    #[error("{loads} oven loads are more than {most}")]
    TooManyLoads {
        /// How many there would be.
        loads: u32,
        /// The most that are planned.
        most: u32,
    },
    /// A weight or a time outside its range.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
