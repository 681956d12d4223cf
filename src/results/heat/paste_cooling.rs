//! The cooling of each paste: chosen and simulated once, and used by every result that needs it.

use super::cooling::{CHILLED, CoolingPlan, cooling_of};
use super::part_matter::part_at;
use super::paste::paste_temperature;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{CooledRange, CoolingWay, Curve, HeatError, Probe};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::{CoolingSettings, HeatSettings, Kitchen};

/// How a paste is cooled from just after stirring, and how that goes.
#[derive(Clone, Debug, PartialEq)]
pub struct PasteCooling {
    /// The place of its part in the formula.
    pub part: usize,
    /// How it is cooled.
    pub plan: CoolingPlan,
    /// The settings it was chosen by.
    pub settings: CoolingSettings,
    /// The simulation of that.
    pub cooled: CooledRange,
    /// Whether it meets the rules at the slow end, in as many vessels as a kitchen has room for.
    pub passes: bool,
}

/// The cooling of every paste that can be followed. One that is already `known`, of as much of the
/// same food from the same temperature in the same kitchen by the same settings, is taken from
/// there.
///
/// ```
/// use softcrumb::engine::formula::PartKind;
/// use softcrumb::results::heat::paste_coolings;
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let coolings = paste_coolings(&sheet.formula, &Kitchen::default(), &HeatSettings::default(), &[]);
/// let parts = sheet.formula.parts.iter();
/// assert_eq!(coolings.len(), parts.filter(|part| part.kind == PartKind::Paste).count());
/// ```
#[must_use]
pub fn paste_coolings(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    known: &[PasteCooling],
) -> Vec<PasteCooling> {
    let numbered = formula.parts.iter().enumerate();
    let pastes = numbered.filter(|(_, own)| own.kind == PartKind::Paste);
    let followed =
        pastes.filter_map(|(part, _)| PasteCooling::of(formula, part, kitchen, heat, known).ok());
    followed.collect()
}

/// Times that differ by less are one, min: a second.
const SAME_TIME: f64 = 1.0 / 60.0;

impl PasteCooling {
    /// The cooling of a paste; taken from what is `known` where that holds it.
    pub(super) fn of(
        formula: &Formula,
        part: usize,
        kitchen: &Kitchen,
        heat: &HeatSettings,
        known: &[PasteCooling],
    ) -> Result<Self, HeatError> {
        let own = part_at(formula, part)?;
        let hot = paste_temperature(formula, part, kitchen, &heat.paste)?;
        let cooling = cooling_of(own, hot, kitchen, &heat.cooling)?;
        let mut known = known.iter();
        let same = known.find(|one| one.plan.cooling == cooling && one.settings == heat.cooling);
        if let Some(same) = same {
            return Ok(Self {
                part,
                ..same.clone()
            });
        }
        let (plan, cooled, passes) = CoolingPlan::simulated(cooling, &heat.cooling)?;
        Ok(Self {
            part,
            plan,
            settings: heat.cooling,
            cooled,
            passes,
        })
    }

    /// Returns its likely mean temperature in °C as it goes into the fridge after so many minutes
    /// out of it, and after so many in there; as it is after twelve hours where that is longer.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn temperatures_after(
        &self,
        out: Minutes,
        fridge: Minutes,
    ) -> Result<[Temperature; 2], HeatError> {
        let cold = Minutes::from_minutes(out.minutes() + fridge.minutes())?;
        let other = self.standing(out)?;
        let curve = other.as_ref().unwrap_or(&self.cooled.middle.curve);
        let start = self.plan.cooling.start;
        let mean = |time| curve.at(time, Probe::Mean).unwrap_or(start);
        Ok([mean(out), mean(cold)])
    }

    /// Its temperature over time where it is out of the fridge for another time than planned; `None`
    /// where it is not. What it is out longer or shorter it is on the bench.
    fn standing(&self, out: Minutes) -> Result<Option<Curve>, HeatError> {
        let planned = self.plan.out()?;
        if (out.minutes() - planned.minutes()).abs() < SAME_TIME {
            return Ok(None);
        }
        let ice = self.plan.way.ice.minutes().min(out.minutes());
        let way = CoolingWay {
            bench: Minutes::from_minutes(out.minutes() - ice)?,
            ice: Minutes::from_minutes(ice)?,
            ..self.plan.way
        };
        let plan = CoolingPlan { way, ..self.plan };
        Ok(Some(plan.likely()?.curve))
    }

    /// Returns the likely minutes from the scald until its middle is as cold as a fridge; `None`
    /// where it never is.
    #[must_use]
    pub fn chilled_after(&self) -> Option<Minutes> {
        let curve = &self.cooled.middle.curve;
        curve.reaches(CHILLED, Probe::Centre, Minutes::ZERO)
    }
}
