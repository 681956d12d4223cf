//! Oven loads in sentences: how far apart they are, and what becomes of the later ones.

use crate::engine::class::OvenPlan;
use crate::engine::numerics::saturating_u32;
use crate::engine::quantity::Minutes;
use crate::results::day::LoadTimes;
use crate::text::{chart::listed, format, format_options::FormatOptions, tr};

/// How far apart the loads are, and what that asks of the dough.
#[must_use]
pub fn loads(times: &LoadTimes, options: FormatOptions) -> String {
    let count = format::count(times.loads.count.get(), options);
    let apart = format::minutes(times.apart, options);
    let all = format::minutes(times.in_all, options);
    if times.loads.staggered {
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
    }
}

/// A button that takes the class's loads over into the plan.
#[must_use]
pub fn class_loads(class: &OvenPlan, options: FormatOptions) -> String {
    let loads = saturating_u32(class.loads.len());
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

/// The class card has another baking time than the programme the plan goes by.
#[must_use]
pub fn bake_difference((class, programme): (Minutes, Minutes), options: FormatOptions) -> String {
    tr!(
        "By the programme in Heat one load bakes {first}, and the plan goes by that; the class \
         card in Batch says {second}.",
        first = format::minutes(programme, options),
        second = format::minutes(class, options)
    )
}

/// The most loads of which each is told by itself.
const TOLD: usize = 4;

/// How much later the loaves of each load after the first begin; `None` for a single load.
#[must_use]
pub fn load_waits(oven: &OvenPlan, options: FormatOptions) -> Option<String> {
    let later = oven.loads.iter().enumerate().skip(1);
    let later: Vec<String> = later
        .take(TOLD)
        .map(|(at, load)| {
            tr!(
                "{minutes} later for load {load}",
                minutes = format::minutes(load.goes_in, options),
                load = at + 1
            )
        })
        .collect();
    let later = listed(&later)?;
    let count = oven.loads.len();
    Some(if count > TOLD + 1 {
        tr!(
            "The class bakes in {count} loads: begin this step {later}, and so on.",
            count = count,
            later = later
        )
    } else {
        tr!(
            "The class bakes in {count} loads: begin this step {later}.",
            count = count,
            later = later
        )
    })
}
