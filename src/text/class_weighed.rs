//! What a class weighs beyond the dough of its loaves, in a sentence.

use crate::engine::quantity::Mass;
use crate::results::batch::class::ClassWeights;
use crate::results::batch::class_weighed::{self, TwoWays};
use crate::results::batch::is_told;
use crate::text::{chart::listed, format, format_options::FormatOptions, tr};

/// "Weighed in all: 4927 g; of it 109 g stays in bowls and on benches."; `None` where it is all dough.
pub(super) fn class_weighed(weights: &ClassWeights, options: FormatOptions) -> Option<String> {
    let weighed = class_weighed::of(weights)?;
    let mass = |mass: Mass| format::mass(mass, options);
    let mut reasons = Vec::new();
    if is_told(weighed.beside) {
        reasons.push(tr!(
            "{mass} is filling, topping or wash",
            mass = mass(weighed.beside)
        ));
    }
    if is_told(weighed.steam) {
        reasons.push(tr!("{mass} leaves as steam", mass = mass(weighed.steam)));
    }
    if is_told(weighed.left) {
        reasons.push(tr!(
            "{mass} stays in bowls and on benches",
            mass = mass(weighed.left)
        ));
    }
    Some(tr!(
        "Weighed in all: {all}; of it {reasons}.",
        all = mass(weighed.all),
        reasons = listed(&reasons)?
    ))
}

/// Says that a class's batch weighs one thing as one batch and another bench by bench.
#[must_use]
pub fn two_ways(two: TwoWays, options: FormatOptions) -> String {
    tr!(
        "For the class there are two ways to weigh: as one batch, {one_batch}, as “What to weigh” lists it; or bench by bench, each by its own scale and with its own rest in the bowl, {by_benches} together, as “Class” lists it and “Shopping and cost” buys it.",
        one_batch = format::mass(two.one_batch, options),
        by_benches = format::mass(two.by_benches, options)
    )
}
