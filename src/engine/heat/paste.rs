//! A paste about to be stirred: its flours, the boiling liquid and the bowl.

use std::borrow::Cow;

use super::component::Component;
use super::evaporation::Stirring;
use super::grain::Grain;
use super::heat_part::{HeatPart, ThermalMaterial};
use super::material::Vessel;
use super::matter::Matter;
use crate::engine::quantity::{HeatPerMass, Mass, Share, Temperature, TemperatureChange};

/// A flour in a paste.
#[derive(Clone, Debug, PartialEq)]
pub struct Scalded {
    /// What it is called.
    pub of: Cow<'static, str>,
    /// How much of it.
    pub mass: Mass,
    /// What it is made of.
    pub matter: Matter,
    /// How much of it is starch.
    pub starch: Share,
    /// What it is milled from.
    pub grain: Grain,
    /// How warm it is before.
    pub temperature: Temperature,
}

/// A paste about to be stirred.
#[derive(Clone, Debug, PartialEq)]
pub struct Paste {
    /// Its flours.
    pub flours: Vec<Scalded>,
    /// Whatever else is in the bowl before the liquid.
    pub others: Vec<HeatPart>,
    /// How much boiling liquid is poured.
    pub liquid: Mass,
    /// What that liquid is made of.
    pub liquid_matter: Matter,
    /// Where it boils in this kitchen.
    pub boils: Temperature,
    /// How much it cools on its way into the bowl.
    pub drop: TemperatureChange,
    /// What it is stirred in.
    pub vessel: Option<Vessel>,
    /// How it is stirred in the open; `None` leaves out what evaporates then.
    pub stirring: Option<Stirring>,
}

/// Heat that a gram of starch takes up as it cooks.
///
/// Source: rice starches 10.2 to 14.6 J/g by calorimetry; wheat about 10 (from memory).
pub const HEAT_OF_COOKING: HeatPerMass = HeatPerMass::known(10.0);

/// Specific heat of hot water, J/(g·K). Source: Choi and Okos 1986, 4.21 at 95 °C.
const WATER_HEAT: f64 = 4.21;

impl Paste {
    /// What water loses between the kettle and the bowl. Common practice.
    pub const DROP: TemperatureChange = TemperatureChange::known(2.0);
    /// What a paste of wheat should reach, °C. Common practice.
    pub const GOAL: Temperature = Temperature::known(65.0);
    /// Grams of water to a gram of starch with which all of it can cook: the end of the table in
    /// `cooked_paste`.
    pub(super) const PLENTY_OF_WATER: f64 = 1.5;

    /// What it must reach: 65 °C, or where the last of its flours is cooked.
    #[must_use]
    pub fn goal(&self) -> Temperature {
        let ends = self.flours.iter().map(|flour| flour.grain.cooks().ends);
        ends.fold(Self::GOAL, Temperature::max_of)
    }

    /// All starch in it.
    pub(super) fn starch(&self) -> Mass {
        let flours = self.flours.iter();
        flours.map(|flour| flour.mass.component(flour.starch)).sum()
    }

    /// All water in it, the flours' own moisture included.
    pub(super) fn water(&self) -> Mass {
        let moisture = |mass: Mass, matter: &Matter| mass.component(matter.share(Component::Water));
        let others = self.others.iter().map(|component| match &component.stuff {
            ThermalMaterial::Food(matter) => moisture(component.mass, matter),
            ThermalMaterial::Ice => component.mass,
            ThermalMaterial::Plain(_) => Mass::ZERO,
        });
        let flours = self
            .flours
            .iter()
            .map(|flour| moisture(flour.mass, &flour.matter));
        moisture(self.liquid, &self.liquid_matter) + others.sum() + flours.sum()
    }

    /// Everything that shares its heat, the liquid `poured` hot.
    pub(super) fn components(&self, poured: Temperature) -> Vec<HeatPart> {
        let mut components = vec![HeatPart {
            of: "liquid poured".into(),
            mass: self.liquid,
            stuff: ThermalMaterial::Food(self.liquid_matter),
            temperature: poured,
        }];
        components.extend(self.flours.iter().map(|flour| HeatPart {
            of: flour.of.clone(),
            mass: flour.mass,
            stuff: ThermalMaterial::Food(flour.matter),
            temperature: flour.temperature,
        }));
        components.extend(self.others.iter().cloned());
        components.extend(self.vessel.as_ref().map(Vessel::component));
        components
    }

    /// Heat its starch takes up in cooking and its steam takes along while it is stirred, when it
    /// comes to `t` °C, J.
    pub(super) fn absorbed(&self, t: f64, by_water: f64) -> f64 {
        let cooked = self.flours.iter().map(|flour| {
            let share = flour.grain.cooked_at(t).value.min(by_water);
            flour.mass.component(flour.starch).grams() * share
        });
        let steam = self.stirring.map_or(0.0, |stirring| stirring.heat_at(t));
        // The drop of the liquid stands for the first of its steam.
        let counted = WATER_HEAT * self.liquid.grams() * self.drop.kelvin();
        HEAT_OF_COOKING.joules_per_gram() * cooked.sum::<f64>() + (steam - counted).max(0.0)
    }
}
