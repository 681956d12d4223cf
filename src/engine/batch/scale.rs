//! Scaling: a formula scaled to a batch target.

use crate::engine::numerics::whole;
use std::num::{NonZeroU16, NonZeroU32};

use super::error::BatchError;
use super::target::{BatchTarget, Losses};
use super::yields::{FactorBasis, Yields};
use crate::engine::formula::{Formula, LineAt, Part, PartKind};
use crate::engine::quantity::{Factor, Mass, Share};

/// What the dough is divided into.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pieces {
    /// How many pieces; for a class, how many loaves.
    pub count: NonZeroU32,
    /// The weight of each before baking.
    pub each: Mass,
}

/// A caution about a batch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BatchCaution {
    /// More would be lost in the oven than the dough holds water.
    BakesAwayMoreThanWater {
        /// What would be lost.
        lost: Mass,
        /// The water in the dough that went in, that of flour included.
        water: Mass,
    },
    /// Losses before and at dividing pass a tenth of the dough: common practice is 1 to 3 %.
    LargeLosses {
        /// The share of the mixed dough that is lost.
        share: Share,
    },
}

/// A formula scaled to a batch target, with the numbers met on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct Scaled {
    /// The target.
    pub wanted: BatchTarget,
    /// The losses.
    pub losses: Losses,
    /// What the factor was found from.
    pub basis: FactorBasis,
    /// How many times the formula's dough is made.
    pub factor: Factor,
    /// How many times fillings, toppings and washes are made: by the dough that reaches the
    /// pieces, with what stays in bag and bowl added.
    pub beside: Factor,
    /// The formula's own dough, all lines of it.
    pub formula_dough: Mass,
    /// The formula's own steam, lost from its pastes.
    pub formula_steam: Mass,
    /// All lines of the dough as they are weighed in.
    pub weighed_in: Mass,
    /// Steam lost from the pastes.
    pub steam: Mass,
    /// Dough in the mixer.
    pub mixed: Mass,
    /// Dough left in bowls and on hands, fixed part and share together.
    pub left_behind: Mass,
    /// Dough lost at dividing.
    pub lost_dividing: Mass,
    /// Dough ready in pieces.
    pub needed: Mass,
    /// What it is divided into.
    pub pieces: Pieces,
    /// Filling that reaches the pieces.
    pub filling: Mass,
    /// Water lost in the oven and while cooling.
    pub lost_baking: Mass,
    /// All pieces as they come from the oven and have cooled, their filling included.
    pub baked: Mass,
    /// One piece as it comes from the oven and has cooled.
    pub baked_each: Mass,
    /// The formula with every line at its exact mass.
    pub formula: Formula,
    /// Cautions.
    pub cautions: Vec<BatchCaution>,
}

/// Scales a formula to a batch target; `pieces` is what the formula, made once, is divided into.
///
/// Dough mixed = (dough needed + residue) / (1 − residue share − dividing share), all in g; the
/// factor is dough mixed / (the formula's dough − its steam). Fillings, toppings and washes follow
/// the dough that reaches the pieces and are divided by (1 − what stays in bag and bowl). An
/// ingredient on hand is counted in every line of the formula. Losses in the oven are water
/// only. Actual masses of an earlier batch are dropped.
///
/// Source: conservation of mass (by definition).
///
/// # Errors
/// [`BatchError`] when the formula has no dough, or none of what is on hand, when the losses take
/// everything, or when a mass or the factor leaves its range.
pub fn scale(
    formula: &Formula,
    wanted: BatchTarget,
    losses: Losses,
    pieces: NonZeroU16,
) -> Result<Scaled, BatchError> {
    let yields = Yields::of(formula, losses)?;
    let (factor, basis) = yields.factor(formula, wanted)?;
    let weighed_in = yields.dough.try_times(factor)?;
    let steam = yields.steam.try_times(factor)?;
    let mixed = weighed_in.less(steam);
    let needed = yields.needed(mixed)?;
    let beside = Factor::from_number(
        needed.grams() / yields.mixable.grams() / (1.0 - losses.topping.fraction()),
    )?;
    let divided = divided(wanted, factor, needed, pieces)?;
    let scaled = scaled_formula(formula, factor, beside)?;
    let filling = reaching(&scaled, losses.topping, |kind| kind == PartKind::Filling);
    let lost_baking = needed.component(losses.bake);
    let baked = (needed.less(lost_baking) + filling).unsaturated()?;
    let baked_each = Mass::from_grams(baked.grams() / f64::from(divided.count.get()))?;
    let left_behind = losses.residue + mixed.component(losses.residue_share);
    let cautions = cautions(&scaled, needed, mixed, lost_baking);
    Ok(Scaled {
        wanted,
        losses,
        basis,
        factor,
        beside,
        formula_dough: yields.dough,
        formula_steam: yields.steam,
        weighed_in,
        steam,
        mixed,
        left_behind,
        lost_dividing: mixed.component(losses.dividing),
        needed,
        pieces: divided,
        filling,
        lost_baking,
        baked,
        baked_each,
        formula: scaled,
        cautions,
    })
}

impl Scaled {
    /// What is in and on the bread beside its dough, g: fillings, toppings and washes, less what stays
    /// in bag and bowl.
    #[must_use]
    pub fn beside_dough(&self) -> Mass {
        let reaches = |kind: PartKind| !kind.in_dough();
        reaching(&self.formula, self.losses.topping, reaches)
    }
}

/// What the dough is divided into: the target's pieces, or the formula's times the factor.
fn divided(
    wanted: BatchTarget,
    factor: Factor,
    needed: Mass,
    pieces: NonZeroU16,
) -> Result<Pieces, BatchError> {
    let count = match wanted {
        BatchTarget::Pieces { count, .. } => u32::from(count.get()),
        BatchTarget::Class {
            students, loaves, ..
        } => u32::from(students.get()) * u32::from(loaves.get()),
        BatchTarget::Times(_)
        | BatchTarget::Dough(_)
        | BatchTarget::FlourOnHand(_)
        | BatchTarget::OnHand { .. } => whole(f64::from(pieces.get()) * factor.number() + 0.5),
    };
    let count = NonZeroU32::new(count).unwrap_or(NonZeroU32::MIN);
    let each = Mass::from_grams(needed.grams() / f64::from(count.get()))?;
    Ok(Pieces { count, each })
}

/// The formula with every line at its exact mass; actual masses are dropped.
pub(super) fn scaled_formula(
    formula: &Formula,
    factor: Factor,
    beside: Factor,
) -> Result<Formula, BatchError> {
    let mut scaled = formula.clone();
    for part in &mut scaled.parts {
        let times = if part.kind.in_dough() { factor } else { beside };
        part.steam = part.steam.try_times(times)?;
        for line in &mut part.lines {
            line.mass = line.mass.try_times(times)?;
            line.poured = None;
        }
    }
    Ok(scaled)
}

/// What of some parts reaches the pieces.
fn reaching(scaled: &Formula, stays: Share, is_one: impl Fn(PartKind) -> bool) -> Mass {
    let made: Mass = scaled
        .parts
        .iter()
        .filter(|part| is_one(part.kind))
        .map(Part::mass)
        .sum();
    made.component(Share::WHOLE.less(stays))
}

/// The cautions about losses.
fn cautions(scaled: &Formula, needed: Mass, mixed: Mass, lost: Mass) -> Vec<BatchCaution> {
    let mut cautions = Vec::new();
    let water: Mass = scaled
        .dough_parts()
        .flat_map(|part| &part.lines)
        .map(|line| line.mass.component(line.food.composition().water))
        .sum();
    let reaches = needed.share_of(mixed).unwrap_or(Share::NONE);
    let water = water.component(reaches);
    if lost > water {
        cautions.push(BatchCaution::BakesAwayMoreThanWater { lost, water });
    }
    let share = Share::WHOLE.less(reaches);
    if share.fraction() > 0.10 {
        cautions.push(BatchCaution::LargeLosses { share });
    }
    cautions
}

impl Scaled {
    /// The exact mass of one line.
    #[must_use]
    pub fn line(&self, at: LineAt) -> Option<Mass> {
        self.formula.line(at).map(|line| line.mass)
    }
}
