//! What can be wrong with a question asked of a formula.

use super::LineAt;
use crate::engine::quantity::{Mass, OutOfRange};

/// Why a formula cannot answer, or cannot be changed as asked.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FormulaError {
    /// The dough holds no flour, so nothing can be a percentage of it.
    #[error("the dough holds no flour")]
    NoFlour,
    /// The part holds no flour of its own.
    #[error("part {part} holds no flour")]
    NoFlourIn {
        /// Which part.
        part: usize,
    },
    /// The formula has no such part.
    #[error("there is no part {part}")]
    NoSuchPart {
        /// Which was asked for.
        part: usize,
    },
    /// The formula has no such line.
    #[error("there is no line {at:?}")]
    NoSuchLine {
        /// Which was asked for.
        at: LineAt,
    },
    /// Only a paste or a preferment has a share that can be set.
    #[error("part {part} is neither a paste nor a preferment")]
    NotMadeAhead {
        /// Which part.
        part: usize,
    },
    /// There is no final dough to take from or give back to.
    #[error("there is no final dough")]
    NoFinalDough,
    /// The part holds nothing that could be made more or less.
    #[error("part {part} holds nothing to change")]
    NothingIn {
        /// Which part.
        part: usize,
    },
    /// No line of the dough can give way: no water and no other liquid, or no paste.
    #[error("nothing in the dough can give way")]
    NothingGivesWay,
    /// An ingredient would go below zero.
    #[error("{food} would go {short:?} below zero")]
    BelowZero {
        /// What the ingredient is called.
        food: String,
        /// How much is missing.
        short: Mass,
    },
    /// Changing this ingredient cannot bring the figure there, whatever its weight.
    #[error("{food} cannot bring the figure there")]
    CannotMove {
        /// What the ingredient is called.
        food: String,
    },
    /// The formula would have more lines than it may.
    #[error("the formula would have more lines than it may")]
    TooManyLines,
    /// The answer is larger than its quantity can be.
    #[error("the answer is off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
