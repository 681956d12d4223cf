//! What to do with a paste that does not get hot enough, or has too little water.

use super::component::Component;
use super::matter::TemperatureStep;
use super::paste::Paste;
use crate::engine::quantity::{Heat, Mass, Share, Temperature};

/// One thing that would bring a paste to its goal, by itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PasteRemedy {
    /// Warm the bowl beforehand, to this.
    WarmBowl {
        /// How warm.
        to: Temperature,
    },
    /// Pour this much more boiling liquid: it brings heat.
    MoreHeat {
        /// How much more.
        liquid: Mass,
    },
    /// Pour this much more liquid: the starch lacks water.
    MoreWater {
        /// How much more.
        liquid: Mass,
    },
    /// Finish on the stove, stirring.
    Stove {
        /// To what.
        to: Temperature,
        /// The heat that takes.
        heat: Heat,
    },
}

/// Below this share of all starch a paste counts as having fallen short. Common practice.
const ENOUGH: f64 = 0.95;

/// What would mend the paste, each by itself, easiest first; a bowl gets no hotter than what is
/// poured into it. `lacking` is the heat the paste lacks to come to its goal.
pub(super) fn remedies(
    paste: &Paste,
    poured: Temperature,
    cooked: Share,
    lacking: Heat,
) -> Vec<PasteRemedy> {
    let mut found = Vec::with_capacity(4);
    if cooked.fraction() >= ENOUGH && lacking <= Heat::ZERO {
        return found;
    }
    let to = paste.goal();
    if lacking > Heat::ZERO {
        found.extend(warm_bowl(paste, poured, lacking));
        found.extend(more_heat(paste, poured, lacking));
    }
    found.extend(more_water(paste));
    if lacking > Heat::ZERO {
        found.push(PasteRemedy::Stove { to, heat: lacking });
    }
    found
}

fn warm_bowl(paste: &Paste, poured: Temperature, lacking: Heat) -> Option<PasteRemedy> {
    let vessel = paste.vessel?;
    let component = vessel.component();
    let over = TemperatureStep {
        from: component.temperature,
        to: poured,
    };
    let capacity = component.specific_heat(over).ok()? * component.mass;
    if capacity.joules_per_kelvin() <= 0.0 {
        return None;
    }
    let needed = vessel.temperature.celsius() + lacking.joules() / capacity.joules_per_kelvin();
    let to = Temperature::from_celsius(needed).ok()?;
    (to <= poured).then_some(PasteRemedy::WarmBowl { to })
}

fn more_heat(paste: &Paste, poured: Temperature, lacking: Heat) -> Option<PasteRemedy> {
    let goal = paste.goal();
    let over = TemperatureStep {
        from: goal,
        to: poured,
    };
    let gram = Mass::from_grams(1.0).ok()?;
    let given = paste.liquid_matter.specific_heat(over).ok()? * gram * (poured - goal);
    if given <= Heat::ZERO {
        return None;
    }
    let liquid = Mass::from_grams(lacking.joules() / given.joules()).ok()?;
    Some(PasteRemedy::MoreHeat { liquid })
}

fn more_water(paste: &Paste) -> Option<PasteRemedy> {
    let short = Paste::PLENTY_OF_WATER * paste.starch().grams() - paste.water().grams();
    let of_liquid = paste.liquid_matter.share(Component::Water).fraction();
    if short <= 0.0 || of_liquid <= 0.0 {
        return None;
    }
    let liquid = Mass::from_grams(short / of_liquid).ok()?;
    Some(PasteRemedy::MoreWater { liquid })
}
