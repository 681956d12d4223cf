//! What to know about a batch.

use super::Advice;
use super::advice::{COMMON_PRACTICE, percent_range};
use crate::engine::batch::BatchCaution;
use crate::words::{manner::Manner, say, write};

/// What a caution about a batch says.
#[must_use]
pub fn batch(caution: &BatchCaution, manner: Manner) -> Advice {
    match *caution {
        BatchCaution::BakesAwayMoreThanWater { lost, water } => Advice::new(
            say!(
                "The oven would take {}, but the dough holds only {} of water.",
                write::mass(lost, manner),
                write::mass(water, manner)
            ),
            say!(
                "Lower the baking loss: {} is usual.",
                percent_range(10.0, 15.0, manner)
            ),
            COMMON_PRACTICE,
        ),
        BatchCaution::LargeLosses { share } => Advice::new(
            say!(
                "So much of the dough, {}, would stay in bowls or be lost at dividing; {} is usual.",
                write::share(share, manner),
                percent_range(1.0, 3.0, manner)
            ),
            say!("Check the losses. If they are meant, go on."),
            COMMON_PRACTICE,
        ),
    }
}
