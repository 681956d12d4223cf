//! Liquid needed: from a wished thickness back to how much to pour.

use super::error::ChocolateError;
use super::handling::Consistency;
use super::suspension::{MixConditions, Suspension};
use super::syrup::Syrup;
use crate::engine::quantity::{Mass, Share, Viscosity};

/// How much liquid gives the thickness that is wished for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LiquidNeeded {
    /// The thickness wished for.
    pub wished: Viscosity,
    /// Liquid for all of the chocolate.
    pub liquid: Mass,
    /// Liquid to chocolate.
    pub liquid_on_chocolate: Share,
    /// The thickness it gives.
    pub thickness: Viscosity,
    /// What that can be used for.
    pub handling: Consistency,
    pub(super) mix: Suspension,
    pub(super) conditions: MixConditions,
}

impl Syrup {
    /// The least liquid, of the kind that is in the syrup, that makes it as thin as `wished`.
    ///
    /// Solved by halving to the last binary place. With plain water there is one answer; a thick
    /// liquid (honey, syrup) may give the same thickness twice, and the smaller amount is given.
    ///
    /// # Errors
    /// [`ChocolateError::TooThin`] when no amount up to twenty times the chocolate thins it so far;
    /// [`ChocolateError::TooThick`] when it would have to be thicker than anything that flows;
    /// [`ChocolateError::NoWater`] when the liquid brings no water.
    pub fn liquid_for(&self, wished: Viscosity) -> Result<LiquidNeeded, ChocolateError> {
        if self.components.liquid.water <= 0.0 {
            return Err(ChocolateError::NoWater);
        }
        let goal = wished.pascal_seconds();
        let conditions = &self.components.conditions;
        let found = self.components.least(|mix| {
            mix.pascal_seconds(conditions)
                .is_some_and(|eta| eta <= goal)
        });
        let Some(grams) = found else {
            return Err(self.too_thin(wished)?);
        };
        let mix = self.components.with(grams);
        let Some(eta) = mix.pascal_seconds(conditions) else {
            return Err(self.too_thin(wished)?);
        };
        // The first amount that flows at all may already be thinner than what was wished for.
        if eta < goal * 0.999 {
            let thickest = Viscosity::from_pascal_seconds(eta)?;
            return Err(ChocolateError::TooThick { wished, thickest });
        }
        let thickness = Viscosity::from_pascal_seconds(eta)?;
        Ok(LiquidNeeded {
            wished,
            liquid: Mass::from_grams(grams)?,
            liquid_on_chocolate: Share::from_fraction(grams / self.components.chocolate.total)?,
            thickness,
            handling: Consistency::of(thickness),
            mix,
            conditions: self.components.conditions,
        })
    }

    fn too_thin(&self, wished: Viscosity) -> Result<ChocolateError, ChocolateError> {
        let thinnest = match self.components.thinnest() {
            Some((grams, eta)) => Some((
                Viscosity::from_pascal_seconds(eta)?,
                Mass::from_grams(grams)?,
            )),
            None => None,
        };
        Ok(ChocolateError::TooThin { wished, thinnest })
    }
}
