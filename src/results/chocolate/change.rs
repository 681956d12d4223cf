//! Formulas with another filling or syrup: set by a share, a ratio, a thickness.

use super::chocolate_results::{ChocolateResults, SyrupResults};
use crate::engine::chocolate::{
    ChocolateError, FillAsked, LiquidNeeded, fill, set_filling, set_liquid,
};
use crate::engine::formula::{Formula, FormulaError};
use crate::engine::quantity::{Factor, Mass, Share, Viscosity};

/// Why a filling or a syrup cannot be set so.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SetError {
    /// The weight cannot be worked out.
    #[error(transparent)]
    Chocolate(#[from] ChocolateError),
    /// The formula cannot take that weight.
    #[error(transparent)]
    Formula(#[from] FormulaError),
}

/// How much filling is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FillingTarget {
    /// So much in each piece.
    Each(Mass),
    /// So much in all, to make.
    Total(Mass),
    /// Such a share of the dough.
    OfDough(Share),
}

impl ChocolateResults {
    /// Returns the formula with so much filling; unchanged where it has no filling.
    ///
    /// # Errors
    /// [`SetError`] where the present filling cannot be worked out; as [`fill`] and
    /// [`set_filling`].
    pub fn with_filling(
        &self,
        formula: &Formula,
        target: FillingTarget,
    ) -> Result<Formula, SetError> {
        let Some(filling) = &self.filling else {
            return Ok(formula.clone());
        };
        let part = filling.part;
        let now = match &filling.fill {
            Some(Ok(now)) => now,
            Some(Err(error)) => return Err(error.clone().into()),
            None => return Err(ChocolateError::NoDough.into()),
        };
        let asked = |asked| fill(asked, now.pieces, now.dough_each, now.stays);
        let of_dough = match target {
            FillingTarget::Each(mass) => asked(FillAsked::Each(mass))?.of_dough,
            FillingTarget::Total(mass) => asked(FillAsked::Total(mass))?.of_dough,
            FillingTarget::OfDough(share) => share,
        };
        Ok(set_filling(formula, part, of_dough)?)
    }

    /// Returns the formula with `ratio` parts of chocolate to one part of liquid in the syrup, by
    /// mass; unchanged where it has no syrup.
    ///
    /// # Errors
    /// [`SetError`] where the present syrup cannot be worked out; as
    /// [`Syrup::liquid_at`](crate::engine::chocolate::Syrup::liquid_at) and [`set_liquid`].
    pub fn with_chocolate_for_one(
        &self,
        formula: &Formula,
        ratio: Factor,
    ) -> Result<Formula, SetError> {
        self.with_liquid(formula, |found| found.syrup.liquid_at(ratio))
    }

    /// Returns the formula with as much liquid as gives the syrup a viscosity in Pa·s; unchanged
    /// where it has no syrup.
    ///
    /// # Errors
    /// [`SetError`] where the present syrup cannot be worked out; as
    /// [`Syrup::liquid_for`](crate::engine::chocolate::Syrup::liquid_for) and [`set_liquid`].
    pub fn with_thickness(
        &self,
        formula: &Formula,
        wished: Viscosity,
    ) -> Result<Formula, SetError> {
        self.with_liquid(formula, |found| Ok(found.syrup.liquid_for(wished)?.liquid))
    }

    /// Returns the liquid, in g, that gives the syrup of the formula a viscosity in Pa·s; none where
    /// there is no such syrup, or no amount does.
    #[must_use]
    pub fn liquid_needed(&self, wished: Viscosity) -> Option<LiquidNeeded> {
        let found = self.syrup.as_ref()?.as_ref().ok()?;
        found.syrup.liquid_for(wished).ok()
    }

    fn with_liquid(
        &self,
        formula: &Formula,
        liquid: impl Fn(&SyrupResults) -> Result<Mass, ChocolateError>,
    ) -> Result<Formula, SetError> {
        match (self.syrup_part, &self.syrup) {
            (Some(part), Some(Ok(found))) => Ok(set_liquid(formula, part, liquid(found)?)?),
            (Some(_), Some(Err(error))) => Err(error.clone().into()),
            (Some(_) | None, _) => Ok(formula.clone()),
        }
    }
}
