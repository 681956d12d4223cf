//! Syrup: chocolate thinned with a liquid, how thick it is and how far from seizing.

use super::blend::{Blend, ChocolatePart, Portioned};
use super::error::ChocolateError;
use super::handling::Consistency;
use super::minimum_water::MinimumWater;
use super::suspension::{MixConditions, Suspension, SyrupModel};
use super::syrup_caution::{SyrupCaution, cautions};
use super::syrup_parts::SyrupParts;
use super::water_activity::WaterActivity;
use crate::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};

/// How a syrup behaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Flow {
    /// No water was added: it is melted chocolate, which flows in its own fat.
    MeltedOnly,
    /// The water is too little: grains and drops are packed, and the chocolate seizes.
    Seized,
    /// It flows.
    Flows {
        /// How thick it is.
        thickness: Viscosity,
        /// What it can be used for.
        handling: Consistency,
    },
}

/// A syrup, with the numbers met on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct Syrup {
    /// How warm it is.
    pub temperature: Temperature,
    /// What the figures rest on.
    pub model: SyrupModel,
    /// Chocolate.
    pub chocolate: Mass,
    /// Liquids, all together.
    pub liquid: Mass,
    /// Liquids to chocolate.
    pub liquid_on_chocolate: Share,
    /// Water, that of the chocolate included.
    pub water: Mass,
    /// Water that the liquids bring.
    pub water_brought: Mass,
    /// Sugars of all kinds.
    pub sugars: Mass,
    /// Sugar in the water.
    pub dissolved: Mass,
    /// Sugar left as grains.
    pub undissolved: Mass,
    /// Fat.
    pub fat: Mass,
    /// Sugar as a share of the sugared water.
    pub sugar_in_water: Share,
    /// How thick the sugared water is.
    pub water_thickness: Viscosity,
    /// Room that grains and drops take, as a share of all room.
    pub crowding: Share,
    /// How many times thicker grains and drops make it; none when they are packed.
    pub thickening: Option<Factor>,
    /// How it behaves.
    pub flow: Flow,
    /// The least of this liquid with which this chocolate flows; none when no amount will do.
    pub least_liquid: Option<Mass>,
    /// The handbook rule beside it.
    pub rule: MinimumWater,
    /// How it must be kept.
    pub keeping: WaterActivity,
    /// Doubts.
    pub cautions: Vec<SyrupCaution>,
    pub(super) components: SyrupParts,
}

impl Syrup {
    /// A syrup of chocolates and liquids.
    ///
    /// Sugar dissolves in all the water up to its solubility; undissolved sugar, cocoa and milk
    /// solids and fat are grains and drops in it; the sugared water's viscosity is multiplied by
    /// Krieger and Dougherty's factor. Swelling of cocoa and starch, gums and the stiffness before
    /// flow sets in are left out: trust the thickness to about a factor of two.
    ///
    /// Where no liquid is given, plain water stands in for it.
    ///
    /// Source: see [`SyrupModel`], `solubility`, `sugar_solution`, `density`.
    ///
    /// # Errors
    /// [`ChocolateError::NoChocolate`] without chocolate; [`ChocolateError::OffScale`] when a mass
    /// passes a tonne.
    pub fn from_parts(
        chocolate: &[ChocolatePart],
        liquid: &[Portioned],
        temperature: Temperature,
        model: SyrupModel,
    ) -> Result<Self, ChocolateError> {
        let solid: Vec<Portioned> = chocolate
            .iter()
            .map(|component| Portioned {
                composition: component.composition,
                mass: component.mass,
            })
            .collect();
        let solid = Blend::of(&solid);
        let poured = Blend::of(liquid);
        if solid.total <= 0.0 {
            return Err(ChocolateError::NoChocolate);
        }
        let one_gram = if poured.total > 0.0 {
            Blend::default().plus(1.0 / poured.total, &poured)
        } else {
            Blend::one_gram_of_water()
        };
        let conditions = MixConditions::new(model, temperature);
        let all = solid.plus(1.0, &poured);
        let components = SyrupParts {
            chocolate: solid,
            liquid: one_gram,
            conditions,
            now: Suspension::of(&all, &conditions),
        };
        Self::assemble(chocolate, components, &poured, &all, temperature, model)
    }

    fn assemble(
        chocolate: &[ChocolatePart],
        components: SyrupParts,
        poured: &Blend,
        all: &Blend,
        temperature: Temperature,
        model: SyrupModel,
    ) -> Result<Self, ChocolateError> {
        let now = components.now;
        let mass = Mass::from_grams(components.chocolate.total)?;
        let water_brought = Mass::from_grams(poured.water)?;
        let mut syrup = Self {
            temperature,
            model,
            chocolate: mass,
            liquid: Mass::from_grams(poured.total)?,
            liquid_on_chocolate: Share::from_fraction(poured.total / components.chocolate.total)?,
            water: Mass::from_grams(all.water)?,
            water_brought,
            sugars: Mass::from_grams(all.sugars)?,
            dissolved: Mass::from_grams(now.dissolved)?,
            undissolved: Mass::from_grams(now.grains.max(0.0))?,
            fat: Mass::from_grams(all.fat)?,
            sugar_in_water: Share::from_percent(now.sugar_percent)?,
            water_thickness: Viscosity::from_pascal_seconds(
                now.liquid_viscosity(&components.conditions),
            )?,
            crowding: Share::from_fraction(now.crowding)?,
            thickening: now
                .thickening(&components.conditions)
                .map(|times| Factor::from_number(times.min(1e6)))
                .transpose()?,
            flow: flow(&components, water_brought)?,
            least_liquid: components
                .least_liquid()
                .map(Mass::from_grams)
                .transpose()?,
            rule: MinimumWater::of(chocolate, mass, water_brought),
            keeping: WaterActivity::of(all, model.solubility),
            cautions: Vec::new(),
            components,
        };
        let sugar_left = (water_brought > Mass::ZERO).then_some(syrup.undissolved);
        let slack = syrup.thickening.map(|_| syrup.slack());
        syrup.cautions = cautions(temperature, sugar_left.unwrap_or_default(), slack, all);
        Ok(syrup)
    }

    /// Room left before grains and drops are packed, as a share of the packing; none when they
    /// are.
    #[must_use]
    pub fn slack(&self) -> Share {
        let limit = self.components.conditions.limit;
        Share::from_fraction(1.0 - self.components.now.crowding / limit).unwrap_or(Share::NONE)
    }

    /// Liquid beyond the least with which it flows; none where it has seized.
    #[must_use]
    pub fn beyond_seizing(&self) -> Option<Mass> {
        self.least_liquid
            .filter(|least| self.liquid >= *least)
            .map(|least| self.liquid.less(least))
    }
}

fn flow(components: &SyrupParts, water_brought: Mass) -> Result<Flow, ChocolateError> {
    if water_brought <= Mass::ZERO {
        return Ok(Flow::MeltedOnly);
    }
    match components.now.pascal_seconds(&components.conditions) {
        Some(eta) => {
            let thickness = Viscosity::from_pascal_seconds(eta)?;
            Ok(Flow::Flows {
                thickness,
                handling: Consistency::of(thickness),
            })
        }
        None => Ok(Flow::Seized),
    }
}
