//! The batch target, and the losses.

use std::num::NonZeroU16;

use crate::engine::formula::LineAt;
use crate::engine::quantity::{Factor, Mass, Share};

/// How much is made; each kind fixes the factor the formula is scaled by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BatchTarget {
    /// So many times the formula.
    Times(Factor),
    /// So much dough, ready to divide.
    Dough(Mass),
    /// So many pieces of such a weight.
    Pieces {
        /// How many.
        count: NonZeroU16,
        /// The weight of each before baking.
        each: Mass,
    },
    /// All of the flour there is.
    FlourOnHand(Mass),
    /// All there is of one ingredient, in all lines of the formula.
    OnHand {
        /// A line that holds the ingredient.
        at: LineAt,
        /// How much there is.
        mass: Mass,
    },
    /// So many students, each making so many loaves of so many pieces.
    Class {
        /// How many students.
        students: NonZeroU16,
        /// Loaves for each student.
        loaves: NonZeroU16,
        /// Dough in each loaf, ready for the tin.
        loaf: Mass,
    },
}

impl Default for BatchTarget {
    fn default() -> Self {
        Self::Times(Factor::ONE)
    }
}

/// What is lost on the way from the scale to the table.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Losses {
    /// Left in bowls and on hands, whatever the size of the batch.
    pub residue: Mass,
    /// Left in bowls and on hands, as a share of the dough.
    pub residue_share: Share,
    /// Left over or trimmed at dividing, as a share of the dough.
    pub dividing: Share,
    /// Water lost in the oven and while cooling, as a share of the dough that went in.
    pub bake: Share,
    /// Syrup and filling that stay in bag and bowl, as a share of what was made.
    pub topping: Share,
}
