//! Suspension: sugar dissolved in the water, and everything else as grains and drops in it.

use super::blend::Blend;
use super::density::Densities;
use super::solubility::SolubilityTable;
use super::sugar_solution::genotelle;
use crate::engine::quantity::{Share, Temperature};

/// What the syrup's figures rest on; each can be changed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SyrupModel {
    /// The share of the room that grains and drops can take before nothing moves: 0.68 by
    /// default, between 0.63 for equal balls in slow flow and 0.71 in fast flow. Grains of mixed
    /// sizes pack closer, rough ones looser; neither is known of a bar of chocolate.
    ///
    /// Source of the two: Krieger, Adv. Colloid Interface Sci. 3 (1972) 111 (from memory).
    pub packing: Share,
    /// Where solubility is read.
    pub solubility: SolubilityTable,
}

impl SyrupModel {
    /// The packing taken when nothing else is said, as a fraction.
    pub const PACKING: f64 = 0.68;
    /// Einstein's factor for balls: how much the first few grains thicken a liquid.
    pub const INTRINSIC: f64 = 2.5;
    /// The packings that may be chosen, as fractions.
    pub const LEAST_PACKING: f64 = 0.50;
    /// See [`SyrupModel::LEAST_PACKING`].
    pub const MOST_PACKING: f64 = 0.90;

    /// The packing as a fraction, held to what may be chosen.
    pub(super) fn limit(self) -> f64 {
        self.packing
            .fraction()
            .clamp(Self::LEAST_PACKING, Self::MOST_PACKING)
    }
}

impl Default for SyrupModel {
    fn default() -> Self {
        Self {
            packing: Share::from_fraction(Self::PACKING).unwrap_or(Share::WHOLE),
            solubility: SolubilityTable::default(),
        }
    }
}

/// What does not change while liquid is poured: temperature, densities, solubility.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct MixConditions {
    /// °C, held to the range of the tables' equations.
    pub(super) celsius: f64,
    /// Sugar that a gram of water takes up, g.
    pub(super) solubility: f64,
    /// See [`SyrupModel::packing`].
    pub(super) limit: f64,
    /// Grains and drops count as packed from here: they thicken a million times, and nearer to the
    /// limit the figure would mean nothing.
    pub(super) packed: f64,
    pub(super) densities: Densities,
}

impl MixConditions {
    pub(super) fn new(model: SyrupModel, temperature: Temperature) -> Self {
        let celsius = temperature.celsius().clamp(0.0, 100.0);
        let limit = model.limit();
        Self {
            celsius,
            solubility: model.solubility.sugar_on_water(temperature).fraction(),
            limit,
            packed: limit * (1.0 - libm::pow(1e6, -1.0 / (SyrupModel::INTRINSIC * limit))),
            densities: Densities::at(celsius),
        }
    }
}

/// One mixture taken apart: g, cm³ and mPa·s.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Suspension {
    /// Sugar in the water, g.
    pub(super) dissolved: f64,
    /// Sugar left as grains, g.
    pub(super) grains: f64,
    /// Sugar in the sugared water, per cent of its mass.
    pub(super) sugar_percent: f64,
    /// Room of the sugared water, cm³.
    pub(super) liquid_room: f64,
    /// Room of fat, cm³.
    pub(super) fat_room: f64,
    /// Room of cocoa and milk solids, cm³.
    pub(super) solids_room: f64,
    /// Room of sugar grains, cm³.
    pub(super) grains_room: f64,
    /// Grains and drops as a share of all room.
    pub(super) crowding: f64,
}

impl Suspension {
    /// Takes a blend apart.
    ///
    /// Sugar dissolves up to its solubility; all sugars count as sucrose. Fat is drops; protein,
    /// fibre, ash and other carbohydrate are grains.
    pub(super) fn of(blend: &Blend, conditions: &MixConditions) -> Self {
        let d = &conditions.densities;
        let dissolved = blend.sugars.min(conditions.solubility * blend.water);
        let grains = blend.sugars - dissolved;
        let solvent = blend.water + blend.alcohol;
        let liquid = solvent + dissolved;
        let sugar_percent = if liquid > 0.0 {
            100.0 * dissolved / liquid
        } else {
            0.0
        };
        let liquid_room =
            blend.water / d.water + blend.alcohol / d.alcohol + dissolved / d.carbohydrate;
        let fat_room = blend.fat / d.fat;
        let solids_room = blend.protein / d.protein
            + blend.fibre / d.fibre
            + blend.other_carbohydrate / d.carbohydrate
            + blend.ash / d.ash;
        let grains_room = grains / d.carbohydrate;
        let crowd = fat_room + solids_room + grains_room;
        let room = crowd + liquid_room;
        let crowding = if room > 0.0 { crowd / room } else { 1.0 };
        Self {
            dissolved,
            grains,
            sugar_percent,
            liquid_room,
            fat_room,
            solids_room,
            grains_room,
            crowding,
        }
    }

    /// Whether grains and drops still move past each other.
    pub(super) fn flows(&self, conditions: &MixConditions) -> bool {
        self.crowding < conditions.packed
    }

    /// Viscosity of the sugared water, Pa·s.
    pub(super) fn liquid_viscosity(&self, conditions: &MixConditions) -> f64 {
        genotelle(self.sugar_percent, conditions.celsius) / 1000.0
    }

    /// How many times thicker grains and drops make it; `None` when they are packed.
    ///
    /// `η / η₀ = (1 − φ / φₘ)^(−2.5·φₘ)`, with φ the share of grains and drops.
    ///
    /// Source: Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137 (from memory).
    pub(super) fn thickening(&self, conditions: &MixConditions) -> Option<f64> {
        let slack = 1.0 - self.crowding / conditions.limit;
        self.flows(conditions)
            .then(|| libm::pow(slack, -SyrupModel::INTRINSIC * conditions.limit))
    }

    /// Viscosity of it all, Pa·s; `None` when packed.
    pub(super) fn pascal_seconds(&self, conditions: &MixConditions) -> Option<f64> {
        self.thickening(conditions)
            .map(|times| times * self.liquid_viscosity(conditions))
    }
}
