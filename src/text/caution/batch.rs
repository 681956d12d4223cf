//! What to know about a batch.

use super::Advice;
use super::advice::{COMMON_PRACTICE, percent_range};
use crate::engine::batch::BatchCaution;
use crate::text::{format, format_options::FormatOptions, tr};

/// What a caution about a batch says.
#[must_use]
pub fn batch(caution: &BatchCaution, options: FormatOptions) -> Advice {
    match *caution {
        BatchCaution::BakesAwayMoreThanWater { lost, water } => Advice::new(
            tr!(
                "The oven would take {first}, but the dough holds only {second} of water.",
                first = format::mass(lost, options),
                second = format::mass(water, options)
            ),
            tr!(
                "Lower the baking loss: {value} is usual.",
                value = percent_range(10.0, 15.0, options)
            ),
            COMMON_PRACTICE,
        ),
        BatchCaution::LargeLosses { share } => Advice::new(
            tr!(
                "So much of the dough, {first}, would stay in bowls or be lost at dividing; {second} is usual.",
                first = format::share(share, options),
                second = percent_range(1.0, 3.0, options)
            ),
            tr!("Check the losses. If they are right, go on."),
            COMMON_PRACTICE,
        ),
    }
}
