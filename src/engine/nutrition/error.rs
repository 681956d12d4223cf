//! Errors of nutrition.

use crate::engine::quantity::{Mass, OutOfRange};

/// Why the nutrition of a batch cannot be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NutritionError {
    /// More would be lost in the oven than there is water.
    #[error("{lost:?} lost in the oven, {water:?} of water")]
    MoreThanWater {
        /// What would be lost.
        lost: Mass,
        /// The water there is.
        water: Mass,
    },
    /// Nothing is left to eat.
    #[error("nothing is left to eat")]
    NothingLeft,
    /// An answer outside the range of its quantity.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
