//! Cooling a part as it is wished: on the bench, in ice water, in the fridge.

use super::part_matter::part_matter;
use super::paste::PasteResult;
use crate::engine::formula::{Formula, Part, PartKind};
use crate::engine::heat::{
    Air, Body, Cooled, Cooling, CoolingAdvice, Exposure, HeatError, IN_FRIDGE, advise,
    cool_through, follow_coarsely,
};
use crate::engine::quantity::{Length, Mass, Minutes, SurfaceCoefficient, Temperature};
use crate::sheet::{CoolingSettings, Kitchen};

/// A cooling that can be followed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingPlan {
    /// Bench and fridge, and whose rules hold.
    pub cooling: Cooling,
    /// Its time in ice water between the two.
    pub ice: Minutes,
}

/// Still air against a lid with air under it: two films of still air in a row on the covered side,
/// one on the other, `(1/(1/9 + 1/9) + 9) / 2` W/(m²·K).
const COVERED: SurfaceCoefficient = SurfaceCoefficient::known(6.75);

/// The temperature at which a paste or preferment counts as chilled. Common practice.
pub(super) const CHILLED: Temperature = Temperature::known(5.0);

/// A part that is `start` warm throughout, cooled as it is wished.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when it is too thin or
/// too large to be handled.
pub fn cooling_plan(
    part: &Part,
    start: Temperature,
    kitchen: &Kitchen,
    settings: &CoolingSettings,
) -> Result<CoolingPlan, HeatError> {
    let (mass, food) = part_matter(part)?;
    // A thickness is through the whole of it, and it is cooled from all sides.
    let half = Length::from_metres(settings.thick.metres() / 2.0)?;
    Ok(CoolingPlan {
        cooling: Cooling {
            body: Body::of(&food, mass, settings.shape, half, (start, kitchen.fridge))?,
            start,
            bench: air(kitchen.room, settings.lid),
            on_bench: settings.bench,
            fridge: air(kitchen.fridge, settings.lid),
            rules: kitchen.rules,
        },
        ice: settings.ice,
    })
}

impl CoolingPlan {
    /// Its surroundings, one after the other.
    #[must_use]
    pub fn exposures(&self) -> Vec<Exposure> {
        let exposures = [
            (self.cooling.on_bench, self.cooling.bench),
            (self.ice, Air::ice_bath()),
            (IN_FRIDGE, self.cooling.fridge),
        ];
        let there = exposures
            .into_iter()
            .filter(|(minutes, _)| *minutes > Minutes::ZERO);
        there
            .map(|(minutes, air)| Exposure { minutes, air })
            .collect()
    }

    /// How long it is outside the fridge.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when that is more than [`Minutes::RANGE`] holds.
    pub fn outside(&self) -> Result<Minutes, HeatError> {
        let minutes = self.cooling.on_bench.minutes() + self.ice.minutes();
        Ok(Minutes::from_minutes(minutes)?)
    }

    /// Its mean temperature as it goes into the fridge, and after so long in there.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn temperatures_after(&self, fridge: Minutes) -> Result<[Temperature; 2], HeatError> {
        let start = self.cooling.start;
        let mut exposures = self.exposures();
        if let Some(last) = exposures.last_mut() {
            last.minutes = fridge;
        }
        let outside = exposures.len().saturating_sub(1);
        let after = |exposures: &[Exposure]| -> Result<Temperature, HeatError> {
            let course = follow_coarsely(&self.cooling.body, start, exposures)?;
            Ok(course.end().map_or(start, |end| end.mean))
        };
        let before = exposures.get(..outside).unwrap_or_default();
        Ok([after(before)?, after(&exposures)?])
    }

    /// Simulates the cooling and checks it against the rules.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn follow(&self) -> Result<Cooled, HeatError> {
        cool_through(
            &self.cooling.body,
            self.cooling.start,
            &self.exposures(),
            self.cooling.rules,
        )
    }

    /// Finds the longest time on the bench without ice water, and what makes it pass where it
    /// does not. Some forty runs: asked for after the frame.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn advise(&self) -> Result<CoolingAdvice, HeatError> {
        advise(&self.cooling)
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
    pub cooled: Option<Cooled>,
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

/// The air round something that is cooled.
const fn air(temperature: Temperature, lid: bool) -> Air {
    Air {
        temperature,
        coefficient: if lid { COVERED } else { Air::STILL },
    }
}
