//! What a label declares: each figure rounded as the law rounds it.

use super::declared_eu::{self, eu};
use super::declared_us::{self, us};
use super::error::NutritionError;
use super::law::LabelLaw;
use super::nutrients::{Nutrient, Nutrients};
use crate::engine::quantity::{Mass, whole};

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

/// Energy and nutrients of a portion, in the order of the law and rounded by it.
///
/// Source: Commission guidance on tolerances (December 2012), table 4, for the EU; 21 CFR
/// 101.9(c) for the US.
///
/// # Errors
/// [`NutritionError::OffScale`] when the energy leaves its range.
pub fn declare(
    portion: &Nutrients,
    law: LabelLaw,
) -> Result<(DeclaredEnergy, Vec<DeclaredLine>), NutritionError> {
    let energy = portion.energy(law)?;
    let (energy, order): (_, &[Nutrient]) = match law {
        LabelLaw::Eu => (declared_eu::energy(energy), &declared_eu::ORDER),
        LabelLaw::Us => (declared_us::energy(energy), &declared_us::ORDER),
    };
    let line = |nutrient: &Nutrient| {
        let exact = portion.of_one(*nutrient);
        DeclaredLine {
            nutrient: *nutrient,
            exact,
            declared: match law {
                LabelLaw::Eu => eu(*nutrient, exact),
                LabelLaw::Us => us(*nutrient, exact),
            },
        }
    };
    Ok((energy, order.iter().map(line).collect()))
}

/// The nearest multiple of `step`; a half goes up.
pub(super) fn nearest(value: f64, step: f64) -> f64 {
    f64::from(whole(value / step + 0.5 + 1e-9)) * step
}

/// So many grams with so many decimals.
pub(super) fn amount(grams: f64, places: u8) -> Declared {
    let mass = Mass::from_grams(grams).unwrap_or_default();
    Declared::Amount { mass, places }
}
