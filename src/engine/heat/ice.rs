//! Ice: what it takes to melt, and how much of it brings water down.

use super::component::Component;
use super::error::HeatError;
use super::matter::{Matter, TemperatureStep};
use crate::engine::quantity::{Heat, HeatPerMass, Mass, Temperature};
use crate::engine::working::{WorkingLine, given};

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

/// Ice that brings water down to a wished temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct IceWater {
    /// All the water there is to be.
    pub water: Mass,
    /// The water from the tap.
    pub tap: Temperature,
    /// What it should come to.
    pub wanted: Temperature,
    /// Heat that brings ice to water as wanted.
    pub into_ice: HeatPerMass,
    /// Heat that tap water gives on its way to as wanted.
    pub from_water: HeatPerMass,
    /// Ice that takes the place of as much of the water.
    pub replacing: Mass,
    /// Ice thrown in on top of all the water: then there is more of it.
    pub on_top: Mass,
}

/// How much ice brings `water` from the tap down to `wanted`.
///
/// Replacing: `x = W·q / (q + i)`; on top: `x = W·q / i`; with q the heat a gram of water gives and
/// i the heat a gram of ice takes, J/g. Handbooks mix the two up.
///
/// # Errors
/// [`HeatError::OffScale`] when `wanted` is below 0 °C, or so much ice is needed that it is no
/// mass at all.
pub fn ice_in_water(
    water: Mass,
    tap: Temperature,
    wanted: Temperature,
    ice: Temperature,
) -> Result<IceWater, HeatError> {
    let gram = Mass::from_grams(1.0)?;
    let from_melting = TemperatureStep {
        from: Temperature::known(0.0),
        to: wanted,
    };
    let warming = Matter::WATER.specific_heat(from_melting)? * gram;
    let per_gram_of_ice = (melting(gram, ice) + warming * (wanted - from_melting.from)).joules();
    let cooling = Matter::WATER.specific_heat(TemperatureStep {
        from: tap,
        to: wanted,
    })? * gram;
    let per_gram_of_water = (cooling * (tap - wanted)).joules().max(0.0);
    let brought = water.grams() * per_gram_of_water;
    Ok(IceWater {
        water,
        tap,
        wanted,
        into_ice: HeatPerMass::from_joules_per_gram(per_gram_of_ice)?,
        from_water: HeatPerMass::from_joules_per_gram(per_gram_of_water)?,
        replacing: Mass::from_grams(brought / (per_gram_of_water + per_gram_of_ice))?,
        on_top: Mass::from_grams(brought / per_gram_of_ice)?,
    })
}

impl IceWater {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let line =
            |rule: &'static str, letter: &'static str, of: &'static str, mass: Mass| WorkingLine {
                rule: rule.into(),
                with: vec![
                    given("W", "water in all", self.water.grams(), "g"),
                    given(
                        "q",
                        "heat from a gram of tap water",
                        self.from_water.joules_per_gram(),
                        "J/g",
                    ),
                    given(
                        "i",
                        "heat into a gram of ice",
                        self.into_ice.joules_per_gram(),
                        "J/g",
                    ),
                ],
                result: given(letter, of, mass.grams(), "g"),
                source: "melting: IAPWS 2006; specific heats: Choi and Okos 1986".into(),
            };
        vec![
            line(
                "W × q / (q + i)",
                "x",
                "ice in place of water",
                self.replacing,
            ),
            line("W × q / i", "y", "ice on top of all the water", self.on_top),
        ]
    }
}
