//! A declared figure: an amount as a label gives it.

use super::nutrients::Nutrient;
use crate::engine::numerics::whole;
use crate::engine::quantity::Mass;

/// A weight as it is declared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Declared {
    /// None, or so little that the law calls it none.
    Nothing,
    /// Less than this.
    Below(Mass),
    /// This much, with so many decimals of a gram (for sodium: of a milligram).
    Amount {
        /// How much.
        mass: Mass,
        /// Decimals.
        places: u8,
    },
}

/// Energy as it is declared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DeclaredEnergy {
    /// Whole kilojoules; none where the law asks for calories only.
    pub kilojoules: Option<u32>,
    /// Whole kilocalories.
    pub kilocalories: u32,
}

/// One line of a declaration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeclaredLine {
    /// Which nutrient.
    pub nutrient: Nutrient,
    /// The exact weight.
    pub exact: Mass,
    /// As declared.
    pub declared: Declared,
}

/// The nearest multiple of `step`; a half goes up.
pub(super) fn nearest(value: f64, step: f64) -> f64 {
    f64::from(whole(value / step + 0.5 + 1e-9)) * step
}

/// An amount in grams with its decimals.
pub(super) fn amount(grams: f64, places: u8) -> Declared {
    let mass = Mass::from_grams(grams).unwrap_or_default();
    Declared::Amount { mass, places }
}
