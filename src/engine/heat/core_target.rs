//! The core: how hot the middle of a loaf should be when it comes out.

use super::error::HeatError;
use crate::engine::quantity::Temperature;

/// What kind of crumb is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Crumb {
    /// Soft, with milk, butter, sugar.
    SoftEnriched,
    /// Rich in egg.
    EggRich,
    /// Lean.
    Lean,
}

/// How hot the middle should be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoreTarget {
    /// From.
    pub from: Temperature,
    /// To.
    pub to: Temperature,
    /// Whether altitude caps it: the middle gets no hotter than water boils.
    pub capped: bool,
}

/// How near the boiling point a core gets before it only dries, K. Common practice.
const BELOW_BOILING: f64 = 1.0;

impl Crumb {
    /// Every kind, in the order lists are shown.
    pub const ALL: [Self; 3] = [Self::SoftEnriched, Self::EggRich, Self::Lean];

    /// At sea level, °C. Common practice; textbooks have 88 to 93 for egg and milk (from memory).
    const fn range(self) -> (f64, f64) {
        match self {
            Self::SoftEnriched => (88.0, 91.0),
            Self::EggRich => (90.0, 93.0),
            Self::Lean => (93.0, 98.0),
        }
    }
}

/// How hot the middle should be, where water boils at `boils`.
///
/// # Errors
/// [`HeatError::OffScale`] never where water boils.
pub fn core_target(crumb: Crumb, boils: Temperature) -> Result<CoreTarget, HeatError> {
    let (from, to) = crumb.range();
    let most = boils.celsius() - BELOW_BOILING;
    Ok(CoreTarget {
        from: Temperature::from_celsius(from.min(most))?,
        to: Temperature::from_celsius(to.min(most))?,
        capped: to > most,
    })
}
