//! Errors of a shopping list.

use crate::engine::quantity::OutOfRange;

/// Why there is no shopping list.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ShoppingError {
    /// A pack that holds nothing.
    #[error("a pack of {name} holds nothing")]
    EmptyPack {
        /// What it should hold.
        name: String,
    },
    /// More packs or more money than can be true.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
