//! Cooling a part as it is wished: on the bench, in ice water, in the fridge.

use super::place::Kitchen;
use super::settings::CoolingSettings;
use crate::engine::formula::Part;
use crate::engine::heat::{
    Air, Body, Cooled, Cooling, CoolingAdvice, Exposure, HeatError, advise, cool_through,
    part_matter,
};
use crate::engine::quantity::{Length, Minutes, SurfaceCoefficient, Temperature};

/// A cooling that can be followed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingPlan {
    /// Bench and fridge, and whose rules hold.
    pub cooling: Cooling,
    /// How long it stands in ice water between the two.
    pub ice: Minutes,
}

/// Still air against a lid with air under it: two films of still air in a row on the covered side,
/// one on the other, `(1/(1/9 + 1/9) + 9) / 2` W/(m²·K).
const COVERED: SurfaceCoefficient = SurfaceCoefficient::known(6.75);

/// How long the fridge is followed, min.
const IN_FRIDGE: Minutes = Minutes::known(720.0);

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
    pub fn stays(&self) -> Vec<Exposure> {
        let stays = [
            (self.cooling.on_bench, self.cooling.bench),
            (self.ice, Air::ice_bath()),
            (IN_FRIDGE, self.cooling.fridge),
        ];
        let there = stays
            .into_iter()
            .filter(|(minutes, _)| *minutes > Minutes::ZERO);
        there
            .map(|(minutes, air)| Exposure { minutes, air })
            .collect()
    }

    /// Follows it and holds it against the rules.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn follow(&self) -> Result<Cooled, HeatError> {
        cool_through(
            &self.cooling.body,
            self.cooling.start,
            &self.stays(),
            self.cooling.rules,
        )
    }

    /// Finds how long it may stay on the bench without ice water, and what makes it pass where it
    /// does not. Some forty runs: asked for after the frame.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn advise(&self) -> Result<CoolingAdvice, HeatError> {
        advise(&self.cooling)
    }
}

/// The air round something that is cooled.
const fn air(temperature: Temperature, lid: bool) -> Air {
    Air {
        temperature,
        coefficient: if lid { COVERED } else { Air::STILL },
    }
}
