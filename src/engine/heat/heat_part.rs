//! One thing that shares its heat with others: what it is, how much of it and how warm.

use std::borrow::Cow;

use super::error::HeatError;
use super::ice::melting;
use super::matter::{HeatCurve, Matter, TemperatureStep};
use crate::engine::quantity::{Heat, Mass, SpecificHeat, Temperature};

/// What a part is, as far as its specific heat goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ThermalMaterial {
    /// A food, its specific heat following its composition and the temperature.
    Food(Matter),
    /// Something of one specific heat: a bowl, a value from a table.
    Plain(SpecificHeat),
    /// Ice, at 0 °C or below; it melts, and ends as water.
    Ice,
}

/// One thing that goes into a mix.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatPart {
    /// What it is called.
    pub of: Cow<'static, str>,
    /// How much of it.
    pub mass: Mass,
    /// What it is.
    pub stuff: ThermalMaterial,
    /// How warm it is.
    pub temperature: Temperature,
}

impl ThermalMaterial {
    pub(crate) fn curve(&self) -> HeatCurve {
        match self {
            Self::Food(matter) => matter.heat_curve(),
            Self::Plain(specific_heat) => {
                HeatCurve::level(specific_heat.joules_per_kilogram_kelvin())
            }
            Self::Ice => Matter::WATER.heat_curve(),
        }
    }
}

impl HeatPart {
    /// Where its warming as what it will be starts: ice starts as water at 0 °C.
    pub(super) fn starts(&self) -> Temperature {
        match self.stuff {
            ThermalMaterial::Ice => Temperature::known(0.0),
            ThermalMaterial::Food(_) | ThermalMaterial::Plain(_) => self.temperature,
        }
    }

    /// The heat it holds above what it would hold at `wanted`; ice takes that of its melting.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never within the ranges of the quantities.
    pub fn heat_above(&self, wanted: Temperature) -> Result<Heat, HeatError> {
        let over = TemperatureStep {
            from: self.starts(),
            to: wanted,
        };
        let held = self.specific_heat(over)? * self.mass * (self.starts() - wanted);
        Ok(match self.stuff {
            ThermalMaterial::Ice => {
                Heat::from_joules(held.joules() - melting(self.mass, self.temperature).joules())
            }
            ThermalMaterial::Food(_) | ThermalMaterial::Plain(_) => held,
        })
    }

    /// Its specific heat over a change of temperature.
    pub(crate) fn specific_heat(&self, over: TemperatureStep) -> Result<SpecificHeat, HeatError> {
        let mean = self
            .stuff
            .curve()
            .mean(over.from.celsius(), over.to.celsius());
        Ok(SpecificHeat::from_joules_per_kilogram_kelvin(mean)?)
    }
}
