//! Pastes whose cooling does not meet the chosen rules, and what cures it.

use super::input::DayInput;
use crate::engine::heat::{CoolingWay, HeatError, quickest};
use crate::engine::quantity::{Length, Mass};
use crate::results::heat::{CoolingPlan, PasteCooling};
use crate::results::run::Run;
use crate::sheet::CoolingSettings;

/// A paste that cools too slowly for the rules, at the slow end of what is uncertain.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PasteConflict {
    /// The place of its part in the formula.
    pub part: usize,
    /// The way it is cooled, by the user's own times or as the quickest there is.
    pub way: CoolingWay,
    /// How deep it lies.
    pub deep: Length,
    /// What cures it; `None` where nothing practical is found.
    pub cure: Option<PasteCure>,
}

/// What cures a cooling that is too slow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PasteCure {
    /// It is cooled by the quickest way instead of the user's own times.
    Quickest {
        /// That way.
        way: CoolingWay,
        /// How deep it then lies.
        deep: Length,
    },
    /// It is cooked in so many portions, each cooled by itself before the next.
    Portions(u16),
}

/// The most portions that are advised. Common practice.
const MOST_PORTIONS: u16 = 4;

/// The pastes of a run that do not meet the rules.
#[must_use]
pub(super) fn paste_conflicts(input: &DayInput, run: &Run) -> Vec<PasteConflict> {
    let settings = &input.sheet.heat.cooling;
    let found = run
        .coolings
        .iter()
        .filter_map(|one| conflict(one, settings).ok().flatten());
    found.collect()
}

fn conflict(
    one: &PasteCooling,
    settings: &CoolingSettings,
) -> Result<Option<PasteConflict>, HeatError> {
    if one.passes {
        return Ok(None);
    }
    let plan = &one.plan;
    Ok(Some(PasteConflict {
        part: one.part,
        way: plan.way,
        deep: plan.deep()?,
        cure: cure(plan, settings)?,
    }))
}

fn cure(plan: &CoolingPlan, settings: &CoolingSettings) -> Result<Option<PasteCure>, HeatError> {
    let place = (settings.vessel, settings.across);
    if !plan.chosen {
        let found = quickest(&plan.cooling, place)?;
        if found.passes {
            let deep = plan.cooling.filling(&found.way)?.deep;
            let way = found.way;
            return Ok(Some(PasteCure::Quickest { way, deep }));
        }
    }
    for portions in 2..=MOST_PORTIONS {
        let mut cooling = plan.cooling;
        cooling.mass = Mass::from_grams(cooling.mass.grams() / f64::from(portions))?;
        if quickest(&cooling, place)?.passes {
            return Ok(Some(PasteCure::Portions(portions)));
        }
    }
    Ok(None)
}
