//! Cooling a part: by the quickest way that meets the rules, or by the user's own times.

use super::part_matter::part_matter;
use crate::engine::formula::Part;
use crate::engine::heat::{
    ChosenWay, CooledRange, Cooling, CoolingAdvice, CoolingWay, HeatError, Pace, VesselCourse,
    VesselStay, advise, quickest,
};
use crate::engine::quantity::{Length, Minutes, Temperature};
use crate::sheet::{CoolingChoice, CoolingSettings, Kitchen};

/// A cooling that can be followed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingPlan {
    /// The food, the kitchen, and whose rules hold.
    pub cooling: Cooling,
    /// The way it is cooled.
    pub way: CoolingWay,
    /// Whether that way was chosen for it, not by the user.
    pub chosen: bool,
}

/// The temperature at which a paste or preferment counts as chilled. Common practice.
pub(super) const CHILLED: Temperature = Temperature::known(5.0);

/// Returns the cooling of a part that is `start` warm throughout: its body, vessel, places and
/// times.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when it is too little
/// or too much to be handled.
pub fn cooling_plan(
    part: &Part,
    start: Temperature,
    kitchen: &Kitchen,
    settings: &CoolingSettings,
) -> Result<CoolingPlan, HeatError> {
    let cooling = cooling_of(part, start, kitchen, settings)?;
    Ok(CoolingPlan::choose(cooling, settings)?.0)
}

/// A part that is `start` warm throughout, the kitchen, and whose rules hold.
pub(super) fn cooling_of(
    part: &Part,
    start: Temperature,
    kitchen: &Kitchen,
    settings: &CoolingSettings,
) -> Result<Cooling, HeatError> {
    let (mass, food) = part_matter(part)?;
    let bowl = kitchen.vessel(kitchen.paste_bowl, None)?;
    Ok(Cooling {
        food,
        mass,
        start,
        room: kitchen.room,
        fridge: kitchen.fridge,
        lid: settings.lid,
        bowl: bowl.map(|bowl| (bowl.material, bowl.mass)),
        rules: kitchen.rules,
        factors: kitchen.cooling,
    })
}

impl CoolingPlan {
    /// The way it is cooled as it is wished, and what choosing it found where it was chosen.
    fn choose(
        cooling: Cooling,
        settings: &CoolingSettings,
    ) -> Result<(Self, Option<ChosenWay>), HeatError> {
        let (way, found) = match settings.way {
            CoolingChoice::Quickest => {
                let found = quickest(&cooling, (settings.vessel, settings.across))?;
                (found.way, Some(found))
            }
            CoolingChoice::Own { bench, ice } => {
                let times = (bench, ice);
                let way = cooling.way(settings.vessel, settings.across, times)?;
                (way, None)
            }
        };
        let plan = Self {
            cooling,
            way,
            chosen: settings.way == CoolingChoice::Quickest,
        };
        Ok((plan, found))
    }

    /// Chooses the way and simulates it at both ends and in the middle of what is uncertain;
    /// whether it meets the rules, with room for it in a kitchen where it was chosen.
    pub(super) fn simulated(
        cooling: Cooling,
        settings: &CoolingSettings,
    ) -> Result<(Self, CooledRange, bool), HeatError> {
        let (plan, found) = Self::choose(cooling, settings)?;
        if let Some(found) = found {
            let cooled = cooling.cool_with_slow(&plan.way, found.slow)?;
            return Ok((plan, cooled, found.passes));
        }
        let cooled = plan.simulate()?;
        let passes = cooled.slow.passes;
        Ok((plan, cooled, passes))
    }

    /// Returns its places one after the other, with °C and minutes, as the safety rules judge them.
    #[must_use]
    pub fn stays(&self) -> Vec<VesselStay> {
        self.cooling.stays(&self.way, Pace::Slow)
    }

    /// Returns how deep it lies in its vessel, in m.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never where the plan was made.
    pub fn deep(&self) -> Result<Length, HeatError> {
        Ok(self.cooling.filling(&self.way)?.deep)
    }

    /// Returns its minutes out of the fridge: bench and ice water.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] for months.
    pub fn out(&self) -> Result<Minutes, HeatError> {
        let out = self.way.bench.minutes() + self.way.ice.minutes();
        Ok(Minutes::from_minutes(out)?)
    }

    /// Simulates the cooling at both ends and in the middle of what is uncertain, and checks it
    /// against the safety rules.
    ///
    /// Source: the rules name theirs, [`RuleSet`](crate::engine::heat::RuleSet).
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn simulate(&self) -> Result<CooledRange, HeatError> {
        self.cooling.cool(&self.way)
    }

    /// Returns the same cooling from another start temperature.
    #[must_use]
    pub const fn starting_at(self, start: Temperature) -> Self {
        Self {
            cooling: Cooling {
                start,
                ..self.cooling
            },
            ..self
        }
    }

    /// Simulates the most likely cooling, which the plan of the day uses: °C over minutes.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn likely(&self) -> Result<VesselCourse, HeatError> {
        self.cooling.simulate(&self.way, Pace::Middle)
    }

    /// Finds the longest time on the bench in minutes, and what makes the cooling pass where it
    /// does not. It takes some dozens of simulations, so the page asks for it after the frame.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn advise(&self) -> Result<CoolingAdvice, HeatError> {
        advise(&self.cooling, &self.way)
    }
}
