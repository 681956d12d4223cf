//! Ice: the heat that melts it.

use super::component::Component;
use crate::engine::quantity::{Heat, HeatPerMass, Mass, Temperature};

const FUSION: HeatPerMass = HeatPerMass::known(333.43);

/// What melts a gram of ice at 0 °C.
///
/// Source: IAPWS 2006 release on ice Ih with IAPWS-95, at one atmosphere.
#[must_use]
pub const fn latent_heat_of_fusion() -> HeatPerMass {
    FUSION
}

/// The heat that turns `ice` into water at 0 °C; ice cannot be warmer than that.
pub(crate) fn melting(ice: Mass, temperature: Temperature) -> Heat {
    let below = temperature.celsius().min(0.0);
    let warming = -1000.0 * Component::Ice.specific_heat().up_to(below);
    FUSION * ice + Heat::from_joules(warming * ice.grams() / 1000.0)
}
