//! What to know about a batch.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::batch::BatchCaution;
use crate::words::manner::Manner;
use crate::words::write;

/// What a caution about a batch says.
#[must_use]
pub fn batch(caution: &BatchCaution, manner: Manner) -> Advice {
    match *caution {
        BatchCaution::BakesAwayMoreThanWater { lost, water } => Advice::new(
            format!(
                "The oven would take {}, but the dough holds only {} of water.",
                write::mass(lost, manner),
                write::mass(water, manner)
            ),
            "Lower the baking loss: 10 to 15 % is usual.",
            COMMON_PRACTICE,
        ),
        BatchCaution::LargeLosses { share } => Advice::new(
            format!(
                "So much of the dough, {}, would stay in bowls or be lost at dividing; 1 to 3 % is \
                 usual.",
                write::share(share, manner)
            ),
            "Check the losses. If they are meant, go on.",
            COMMON_PRACTICE,
        ),
    }
}
