//! The declaration of a portion: each figure rounded as the law rounds it.

use super::declared::{DeclaredEnergy, DeclaredLine};
use super::declared_eu::{self, eu};
use super::declared_us::{self, us};
use super::error::NutritionError;
use super::law::LabelLaw;
use super::nutrients::{Nutrient, Nutrients};

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
