//! Liquid needed: from a wished thickness back to how much to pour.

use super::error::ChocolateError;
use super::handling::Handling;
use super::suspension::{Surroundings, Suspension};
use super::syrup::{Syrup, SyrupParts};
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
    pub gives: Viscosity,
    /// What that can be used for.
    pub handling: Handling,
    pub(super) mix: Suspension,
    pub(super) around: Surroundings,
}

/// How far liquid is looked for, in multiples of the chocolate.
const MOST: f64 = 20.0;
/// The first amount tried, in multiples of the chocolate.
const LEAST: f64 = 1e-3;
/// Steps of the first look, each a little larger than the one before: the end is reached in 120.
const STEPS: u32 = 120;
/// Halvings after it: enough to use up every binary place.
const HALVINGS: u32 = 60;

impl SyrupParts {
    /// Grams of the least liquid for which `fits` holds, with the last amount for which it does
    /// not; `None` when it never does within the search.
    ///
    /// Looks in growing steps first, because a thick liquid may thin and then thicken, then halves
    /// the step 60 times.
    fn least(&self, fits: impl Fn(&Suspension) -> bool) -> Option<f64> {
        let unit = self.chocolate.total;
        if fits(&self.with(0.0)) {
            return Some(0.0);
        }
        let growth = libm::pow(MOST / LEAST, 1.0 / f64::from(STEPS));
        let (mut below, mut above) = (0.0, LEAST * unit);
        for _ in 0..=STEPS {
            if fits(&self.with(above)) {
                for _ in 0..HALVINGS {
                    let middle = 0.5 * (below + above);
                    if fits(&self.with(middle)) {
                        above = middle;
                    } else {
                        below = middle;
                    }
                }
                return Some(above);
            }
            below = above;
            above *= growth;
        }
        None
    }

    /// Grams of the least liquid with which the chocolate flows.
    pub(super) fn least_liquid(&self) -> Option<f64> {
        self.least(|mix| mix.flows(&self.around))
    }

    /// The thinnest that the search meets: grams of liquid and Pa·s.
    fn thinnest(&self) -> Option<(f64, f64)> {
        let growth = libm::pow(MOST / LEAST, 1.0 / f64::from(STEPS));
        let mut liquid = LEAST * self.chocolate.total;
        let mut best: Option<(f64, f64)> = None;
        for _ in 0..=STEPS {
            if let Some(eta) = self.with(liquid).pascal_seconds(&self.around)
                && best.is_none_or(|(_, thinnest)| eta < thinnest)
            {
                best = Some((liquid, eta));
            }
            liquid *= growth;
        }
        best
    }
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
        let around = &self.components.around;
        let found = self
            .components
            .least(|mix| mix.pascal_seconds(around).is_some_and(|eta| eta <= goal));
        let Some(grams) = found else {
            return Err(self.too_thin(wished)?);
        };
        let mix = self.components.with(grams);
        let Some(eta) = mix.pascal_seconds(around) else {
            return Err(self.too_thin(wished)?);
        };
        // The first amount that flows at all may already be thinner than what was wished for.
        if eta < goal * 0.999 {
            let thickest = Viscosity::from_pascal_seconds(eta)?;
            return Err(ChocolateError::TooThick { wished, thickest });
        }
        let gives = Viscosity::from_pascal_seconds(eta)?;
        Ok(LiquidNeeded {
            wished,
            liquid: Mass::from_grams(grams)?,
            liquid_on_chocolate: Share::from_fraction(grams / self.components.chocolate.total)?,
            gives,
            handling: Handling::of(gives),
            mix,
            around: self.components.around,
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
