//! Errors of heat: why a question has no answer.

use crate::engine::quantity::{Mass, OutOfRange, Temperature};

/// Why a question about heat has no answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum HeatError {
    /// Nothing that shares its heat weighs anything.
    #[error("nothing in the bowl")]
    EmptyBowl,
    /// The formula has no such part.
    #[error("no such part")]
    NoPart,
    /// Nothing is known of what the food is made of.
    #[error("composition of the food is not known")]
    UnknownFood,
    /// The ice does not all melt: everything settles at 0 °C with ice left over.
    #[error("ice is left over")]
    IceLeft,
    /// The answer leaves the range of its quantity.
    #[error("the answer is off the scale: {0}")]
    OffScale(#[from] OutOfRange),
    /// There is no liquid whose temperature could be chosen.
    #[error("no liquid to warm or cool")]
    NoLiquid,
    /// There is no flour in the paste, or no starch in its flour.
    #[error("no flour in the paste")]
    NoFlour,
    /// The part is not a paste: it has no flour, or no liquid to pour on it.
    #[error("not a paste")]
    NoPaste,
    /// There is no chocolate to melt.
    #[error("no chocolate")]
    NoChocolate,
    /// No liquid is poured on the chocolate.
    #[error("no liquid poured on the chocolate")]
    NothingPoured,
    /// The step neither cools nor warms the part.
    #[error("the step neither cools nor warms it")]
    NoTarget,
    /// It weighs more after cooking than before.
    #[error("{after:?} after cooking is more than {before:?} before")]
    Gained {
        /// Weight before cooking.
        before: Mass,
        /// Weight after cooking.
        after: Mass,
    },
    /// The surroundings are not on the side of the target: waiting never gets there.
    #[error("{surroundings:?} never brings it to {target:?}")]
    NeverReached {
        /// What was wished for.
        target: Temperature,
        /// What surrounds it.
        surroundings: Temperature,
    },
    /// The oven is not hotter than what is to be reached in it.
    #[error("an oven at {oven:?} never bakes to {core:?}")]
    OvenTooCool {
        /// The oven.
        oven: Temperature,
        /// What the middle should reach.
        core: Temperature,
    },
    /// The known bake's piece weighs nothing, so no piece can be compared with it.
    #[error("the known bake's piece weighs nothing")]
    NoKnownPiece,
    /// A programme without a phase, or without a minute in it.
    #[error("the programme is empty")]
    EmptyProgramme,
}
