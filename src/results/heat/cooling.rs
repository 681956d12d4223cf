//! Cooling a part: by the quickest way that meets the rules, or by the user's own times.

use super::part_matter::part_matter;
use super::paste::PasteResult;
use crate::engine::formula::{Formula, Part, PartKind};
use crate::engine::heat::{
    CooledRange, Cooling, CoolingAdvice, CoolingWay, HeatError, Pace, Probe, VesselCourse,
    VesselStay, advise, quickest,
};
use crate::engine::quantity::{Length, Mass, Minutes, Temperature};
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

/// The cooling of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingResult {
    /// The place of the part in the formula.
    pub part: usize,
    /// Whether its temperature comes from cooking it as a paste, not from the user.
    pub is_paste: bool,
    /// How it is cooled; `None` where it is not known how hot it is.
    pub plan: Option<Result<CoolingPlan, HeatError>>,
    /// The simulation of that.
    pub cooled: Option<CooledRange>,
}

impl CoolingResult {
    /// Simulates a part from the temperature its paste reached, or from its own.
    #[must_use]
    pub fn of(
        formula: &Formula,
        part: usize,
        pastes: &[PasteResult],
        kitchen: &Kitchen,
        settings: &CoolingSettings,
    ) -> Self {
        let paste = pastes.iter().find(|paste| paste.part == part);
        let cooked = paste.and_then(|paste| paste.cooked.as_ref().ok());
        let own = formula.parts.get(part);
        let start = cooked
            .map(|cooked| cooked.temperature)
            .or_else(|| own?.temperature);
        let plan = own
            .zip(start)
            .map(|(own, start)| cooling_plan(own, start, kitchen, settings));
        let good = plan.as_ref().and_then(|plan| plan.as_ref().ok());
        Self {
            part,
            is_paste: cooked.is_some(),
            cooled: good.and_then(|plan| plan.follow().ok()),
            plan,
        }
    }

    /// The plan, where the cooling can be followed.
    #[must_use]
    pub fn good_plan(&self) -> Option<&CoolingPlan> {
        self.plan.as_ref()?.as_ref().ok()
    }

    /// Why the cooling cannot be followed.
    #[must_use]
    pub fn error(&self) -> Option<&HeatError> {
        self.plan.as_ref()?.as_ref().err()
    }
}

/// Parts with something in them that is cooked, or may be: pastes, fillings, toppings.
#[must_use]
pub fn coolable(formula: &Formula) -> Vec<usize> {
    let numbered = formula.parts.iter().enumerate();
    let hot = numbered.filter(|(_, own)| match own.kind {
        PartKind::Paste | PartKind::Filling | PartKind::Topping => own.mass() > Mass::ZERO,
        PartKind::Preferment | PartKind::Final | PartKind::Wash => false,
    });
    hot.map(|(part, _)| part).collect()
}
