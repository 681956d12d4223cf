//! The loads of the oven in sentences: how far apart they are, and what becomes of the later ones.

use crate::engine::class::OvenPlan;
use crate::engine::plan::Loads;
use crate::engine::quantity::Minutes;
use crate::text::{format, format_options::FormatOptions, tr};

/// How far apart the loads are, and what that asks of the dough; nothing for a single load.
#[must_use]
pub fn loads(loads: Loads, bake: Minutes, options: FormatOptions) -> Option<String> {
    if loads.count.get() < 2 {
        return None;
    }
    let count = format::count(loads.count.get(), options);
    let apart = bake.minutes() + loads.between.minutes();
    let apart = format::minutes(Minutes::from_minutes(apart).unwrap_or(bake), options);
    let all = format::minutes(loads.from_first_to_last(bake), options);
    Some(if loads.staggered {
        tr!(
            "{count} loads, {apart} apart, {all} from the first in to the last out. Each load’s \
             dough begins as much later than the one before; the steps say when.",
            count = count,
            apart = apart,
            all = all
        )
    } else {
        tr!(
            "{count} loads, {apart} apart, {all} from the first in to the last out. All pieces \
             are shaped together; those of later loads wait in the fridge, and the steps say when \
             their proof begins.",
            count = count,
            apart = apart,
            all = all
        )
    })
}

/// What the class asks of the oven, as something to take over.
#[must_use]
pub fn class_loads(class: &OvenPlan, options: FormatOptions) -> String {
    let loads = u32::try_from(class.loads.len()).unwrap_or(u32::MAX);
    let loaves = format::count(class.loaves.get(), options);
    match loads {
        1 => tr!(
            "Plan the class’s {loaves} loaves, one load",
            loaves = loaves
        ),
        more => tr!(
            "Plan the class’s {loaves} loaves, {value} loads",
            loaves = loaves,
            value = format::count(more, options)
        ),
    }
}

/// What is said where the class card has another baking time than the programme the plan goes by.
#[must_use]
pub fn programme_differs(
    class: Minutes,
    programme: Minutes,
    options: FormatOptions,
) -> Option<String> {
    let off = (class.minutes() - programme.minutes()).abs();
    (off >= 1.0).then(|| {
        tr!(
            "By the programme in Heat one load bakes {first}, and the plan goes by that; the class \
             card in Batch says {second}.",
            first = format::minutes(programme, options),
            second = format::minutes(class, options)
        )
    })
}
