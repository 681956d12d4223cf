//! Yield: how much dough comes out of a formula, and the factor that gives what is wanted.

use super::error::BatchError;
use super::wanted::{Losses, Wanted};
use crate::engine::formula::{Formula, Line, LineAt, Stream};
use crate::engine::quantity::{Factor, Mass, Share};

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
        let dough = formula.dough();
        let steam: Mass = formula.dough_streams().map(|stream| stream.steam).sum();
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

    /// The dough that reaches the pieces when so much is mixed.
    pub(super) fn needed(&self, mixed: Mass) -> Result<Mass, BatchError> {
        let needed = mixed.grams() * self.kept - self.losses.residue.grams();
        if needed <= 0.0 {
            return Err(self.nothing_left(Some(mixed)));
        }
        Ok(Mass::from_grams(needed)?)
    }

    /// How many times the formula gives what is wanted.
    pub(super) fn factor(&self, formula: &Formula, wanted: Wanted) -> Result<Factor, BatchError> {
        match wanted {
            Wanted::Times(factor) => Ok(factor),
            Wanted::Dough(mass) => self.for_dough(mass.grams()),
            Wanted::Pieces { count, each } => self.for_dough(f64::from(count.get()) * each.grams()),
            Wanted::Class {
                students,
                loaves,
                loaf,
            } => self.for_dough(f64::from(students.get()) * f64::from(loaves.get()) * loaf.grams()),
            Wanted::FlourOnHand(mass) => {
                let flour = formula.flour();
                if flour <= Mass::ZERO {
                    return Err(BatchError::NoFlour);
                }
                Ok(Factor::from_number(mass.grams() / flour.grams())?)
            }
            Wanted::OnHand { at, mass } => self.for_ingredient(formula, at, mass),
        }
    }

    /// How many times the formula gives so many grams of dough in pieces.
    fn for_dough(&self, needed: f64) -> Result<Factor, BatchError> {
        let mixed = (needed + self.losses.residue.grams()) / self.kept;
        Ok(Factor::from_number(mixed / self.mixable.grams())?)
    }

    /// How many times the formula uses up an ingredient, wherever it stands.
    ///
    /// In the dough it grows with the factor; beside the dough with the dough that reaches the
    /// pieces, which is the factor less the fixed residue. Both are straight lines, so the sum is
    /// solved exactly.
    fn for_ingredient(
        &self,
        formula: &Formula,
        at: LineAt,
        mass: Mass,
    ) -> Result<Factor, BatchError> {
        let wanted = formula.line(at).ok_or(BatchError::NotInFormula { at })?;
        let held = |in_dough: bool| -> Mass {
            formula
                .streams
                .iter()
                .filter(|stream| stream.kind.in_dough() == in_dough)
                .flat_map(|stream: &Stream| &stream.lines)
                .filter(|line: &&Line| line.food == wanted.food)
                .map(|line| line.mass)
                .sum()
        };
        let beside = held(false).grams() / (1.0 - self.losses.topping.fraction());
        let a_time = held(true).grams() + beside * self.kept;
        if a_time <= 0.0 {
            return Err(BatchError::NoneInFormula { at });
        }
        let residue = self.losses.residue.grams() / self.mixable.grams();
        Ok(Factor::from_number(
            (mass.grams() + beside * residue) / a_time,
        )?)
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
