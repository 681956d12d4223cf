//! Cooling a part: by the quickest way that meets the rules, or by the user's own times.

use super::part_matter::part_matter;
use crate::engine::formula::Part;
use crate::engine::heat::{
    CooledRange, Cooling, CoolingAdvice, CoolingWay, HeatError, Pace, Probe, VesselCourse,
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

/// A part that is `start` warm throughout, cooled as it is wished.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when it is too little or
/// too much to be handled.
pub fn cooling_plan(
    part: &Part,
    start: Temperature,
    kitchen: &Kitchen,
    settings: &CoolingSettings,
) -> Result<CoolingPlan, HeatError> {
    let (mass, food) = part_matter(part)?;
    let bowl = kitchen.vessel(kitchen.paste_bowl, None)?;
    let cooling = Cooling {
        food,
        mass,
        start,
        room: kitchen.room,
        fridge: kitchen.fridge,
        lid: settings.lid,
        bowl: bowl.map(|bowl| (bowl.material, bowl.mass)),
        rules: kitchen.rules,
        factors: kitchen.cooling,
    };
    let way = match settings.way {
        CoolingChoice::Quickest => quickest(&cooling, (settings.vessel, settings.across))?.way,
        CoolingChoice::Own { bench, ice } => {
            cooling.way(settings.vessel, settings.across, (bench, ice))?
        }
    };
    Ok(CoolingPlan {
        cooling,
        way,
        chosen: settings.way == CoolingChoice::Quickest,
    })
}

impl CoolingPlan {
    /// The places it is put in, as the verdict on safety takes them, one after the other.
    #[must_use]
    pub fn stays(&self) -> Vec<VesselStay> {
        self.cooling.stays(&self.way, Pace::Slow)
    }

    /// Its mean temperature as it goes into the fridge, and after so long in there; as it is after
    /// twelve hours where that is longer.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn temperatures_after(&self, fridge: Minutes) -> Result<[Temperature; 2], HeatError> {
        let curve = self.likely()?.curve;
        let out = self.out()?;
        let cold = Minutes::from_minutes(out.minutes() + fridge.minutes())?;
        let mean = |time| curve.at(time, Probe::Mean).unwrap_or(self.cooling.start);
        Ok([mean(out), mean(cold)])
    }

    /// How deep it lies in its vessel.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never where the plan was made.
    pub fn deep(&self) -> Result<Length, HeatError> {
        Ok(self.cooling.filling(&self.way)?.deep)
    }

    /// Its time out of the fridge: bench and ice water.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] for months.
    pub fn out(&self) -> Result<Minutes, HeatError> {
        let out = self.way.bench.minutes() + self.way.ice.minutes();
        Ok(Minutes::from_minutes(out)?)
    }

    /// Simulates the cooling at both ends and in the middle of what is uncertain, and checks it
    /// against the rules.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn follow(&self) -> Result<CooledRange, HeatError> {
        self.cooling.cool(&self.way)
    }

    /// Simulates the cooling as is likely: what a plan reckons with.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn likely(&self) -> Result<VesselCourse, HeatError> {
        self.cooling.follow(&self.way, Pace::Middle)
    }

    /// Finds the longest time on the bench, and what makes it pass where it does not. Some dozens
    /// of runs: asked for after the frame.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn advise(&self) -> Result<CoolingAdvice, HeatError> {
        advise(&self.cooling, &self.way)
    }
}
