//! What can stand in the way of an answer about a rise.

use crate::engine::formula::FormulaError;
use crate::engine::heat::HeatError;
use crate::engine::quantity::{Minutes, OutOfRange, Share, Temperature};

/// Why a question about a rise has no answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RiseError {
    /// There is no yeast in the dough.
    #[error("no yeast")]
    NoYeast,
    /// The three temperatures are in no order that makes a curve of one hump.
    #[error("least {least:?}, best {best:?}, most {most:?} make no curve")]
    NotCardinal {
        /// The least.
        least: Temperature,
        /// The best.
        best: Temperature,
        /// The most.
        most: Temperature,
    },
    /// The rise that is known was at a temperature at which yeast does not work.
    #[error("no rise at {at:?}")]
    AnchorAtRest {
        /// That temperature.
        at: Temperature,
    },
    /// A known rise of no time at all says nothing.
    #[error("a known rise of no time")]
    AnchorOfNoTime,
    /// It is not up in the time that was followed.
    #[error("only {reached:?} of the rise after {followed:?}")]
    NotInTime {
        /// How long it was followed.
        followed: Minutes,
        /// How much of the rise was done by then.
        reached: Share,
    },
    /// The temperatures could not be found.
    #[error(transparent)]
    Heat(#[from] HeatError),
    /// The dough could not be weighed up.
    #[error(transparent)]
    Formula(#[from] FormulaError),
    /// The answer leaves the range of its quantity.
    #[error("the answer is off the scale: {0}")]
    OffScale(#[from] OutOfRange),
}
