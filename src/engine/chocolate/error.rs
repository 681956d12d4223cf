//! What can keep a filling or a syrup from being worked out.

use crate::engine::quantity::{Mass, OutOfRange, Share, Viscosity};

/// Why there is no answer about chocolate.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ChocolateError {
    /// There is no chocolate among the ingredients.
    #[error("there is no chocolate")]
    NoChocolate,
    /// A piece of dough that weighs nothing cannot be filled.
    #[error("a piece of dough weighs nothing")]
    NoDough,
    /// All of what is made would stay in bag and bowl.
    #[error("{stays:?} stays behind: nothing is left")]
    NothingLeft {
        /// The share that stays.
        stays: Share,
    },
    /// The liquid brings no water, so there is nothing for the sugar to dissolve in.
    #[error("the liquid brings no water")]
    NoWater,
    /// No amount of this liquid up to twenty times the chocolate gets it so thin.
    #[error("{wished:?} cannot be reached")]
    TooThin {
        /// The thickness wished for.
        wished: Viscosity,
        /// The thinnest this liquid gets it, and with how much; none when it always seizes.
        thinnest: Option<(Viscosity, Mass)>,
    },
    /// No amount of this liquid makes it so thick without seizing, as near as can be told.
    #[error("{wished:?} is thicker than anything that still flows")]
    TooThick {
        /// The thickness wished for.
        wished: Viscosity,
        /// The thickest that can be told from seized.
        thickest: Viscosity,
    },
    /// A number left its range.
    #[error("off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
