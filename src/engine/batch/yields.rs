//! Yield: how much dough a formula gives, and the factor that meets a target.

use super::error::BatchError;
use super::target::{BatchTarget, Losses};
use crate::engine::formula::{Formula, Line, LineAt, Part};
use crate::engine::quantity::{Factor, Mass, Share};

/// What a factor follows from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FactorBasis {
    /// The factor itself was asked for.
    Asked,
    /// The dough that must reach the pieces.
    Dough,
    /// The flour on hand, against that of the formula.
    Flour(Mass),
    /// An ingredient on hand, against what the formula holds of it.
    Ingredient {
        /// In the dough.
        in_dough: Mass,
        /// In fillings, toppings and washes.
        outside: Mass,
    },
}

/// How much dough comes out of a formula, and what of it reaches the pieces.
#[derive(Clone, Copy, Debug)]
pub(super) struct Yields {
    /// All lines of the dough.
    pub(super) dough: Mass,
    /// Steam lost from its pastes.
    pub(super) steam: Mass,
    /// Dough in the mixer: lines less steam. Never nothing.
    pub(super) mixable: Mass,
    losses: Losses,
    /// The part of the mixed dough that reaches the pieces, before the fixed residue is taken off.
    kept: f64,
}

impl Yields {
    pub(super) fn of(formula: &Formula, losses: Losses) -> Result<Self, BatchError> {
        let dough = formula.dough().unsaturated()?;
        let steam: Mass = formula.dough_parts().map(|part| part.steam).sum();
        let mixable = dough.less(steam);
        if mixable <= Mass::ZERO {
            return Err(BatchError::NoDough);
        }
        let kept = 1.0 - losses.residue_share.fraction() - losses.dividing.fraction();
        let yields = Self {
            dough,
            steam,
            mixable,
            losses,
            kept,
        };
        let leftover = losses.bake.fraction().max(losses.topping.fraction());
        if kept <= 0.0 || leftover >= 1.0 {
            return Err(yields.nothing_left(None));
        }
        Ok(yields)
    }

    /// The dough that reaches the pieces of `mixed` dough.
    pub(super) fn needed(&self, mixed: Mass) -> Result<Mass, BatchError> {
        let needed = mixed.grams() * self.kept - self.losses.residue.grams();
        if needed <= 0.0 {
            return Err(self.nothing_left(Some(mixed)));
        }
        Ok(Mass::from_grams(needed)?)
    }

    /// The factor that meets a target, and what it follows from.
    pub(super) fn factor(
        &self,
        formula: &Formula,
        wanted: BatchTarget,
    ) -> Result<(Factor, FactorBasis), BatchError> {
        match wanted {
            BatchTarget::Times(factor) => Ok((factor, FactorBasis::Asked)),
            BatchTarget::Dough(mass) => self.for_dough(mass.grams()),
            BatchTarget::Pieces { count, each } => {
                self.for_dough(f64::from(count.get()) * each.grams())
            }
            BatchTarget::Class {
                students,
                loaves,
                loaf,
            } => self.for_dough(f64::from(students.get()) * f64::from(loaves.get()) * loaf.grams()),
            BatchTarget::FlourOnHand(mass) => {
                let flour = formula.flour().unsaturated()?;
                if flour <= Mass::ZERO {
                    return Err(BatchError::NoFlour);
                }
                let factor = Factor::from_number(mass.grams() / flour.grams())?;
                Ok((factor, FactorBasis::Flour(flour)))
            }
            BatchTarget::OnHand { at, mass } => self.for_ingredient(formula, at, mass),
        }
    }

    /// The factor for a mass of dough in pieces, g.
    fn for_dough(&self, needed: f64) -> Result<(Factor, FactorBasis), BatchError> {
        let mixed = (needed + self.losses.residue.grams()) / self.kept;
        let factor = Factor::from_number(mixed / self.mixable.grams())?;
        Ok((factor, FactorBasis::Dough))
    }

    /// The factor that uses up an ingredient in all its lines.
    ///
    /// In the dough it grows with the factor; beside the dough with the dough that reaches the
    /// pieces, which is the factor less the fixed residue. Both are straight lines, so the sum is
    /// solved exactly.
    fn for_ingredient(
        &self,
        formula: &Formula,
        at: LineAt,
        mass: Mass,
    ) -> Result<(Factor, FactorBasis), BatchError> {
        let wanted = formula.line(at).ok_or(BatchError::NotInFormula { at })?;
        let held = |in_dough: bool| -> Mass {
            let parts = formula.parts.iter();
            parts
                .filter(|part| part.kind.in_dough() == in_dough)
                .flat_map(|part: &Part| &part.lines)
                .filter(|line: &&Line| line.food == wanted.food)
                .map(|line| line.mass)
                .sum()
        };
        let (in_dough, outside) = (held(true).unsaturated()?, held(false).unsaturated()?);
        let beside = outside.grams() / (1.0 - self.losses.topping.fraction());
        let a_time = in_dough.grams() + beside * self.kept;
        if a_time <= 0.0 {
            return Err(BatchError::NoneInFormula { at });
        }
        let residue = self.losses.residue.grams() / self.mixable.grams();
        let factor = Factor::from_number((mass.grams() + beside * residue) / a_time)?;
        Ok((factor, FactorBasis::Ingredient { in_dough, outside }))
    }

    fn nothing_left(&self, mixed: Option<Mass>) -> BatchError {
        let share: Share = self.losses.residue_share.plus(self.losses.dividing);
        BatchError::LossesTakeAll {
            mixed,
            residue: self.losses.residue,
            share,
        }
    }
}
