//! Bowls and pots: what they are made of, and how much of one warms with what is in it.

use super::error::HeatError;
use super::heat_part::{HeatPart, ThermalMaterial};
use crate::engine::quantity::{Mass, Share, SpecificHeat, Temperature};

/// What a bowl is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Material {
    /// Stainless steel.
    Steel,
    /// Aluminium.
    Aluminium,
    /// Copper.
    Copper,
    /// Glass.
    Glass,
    /// Stoneware, earthenware, porcelain.
    Ceramic,
    /// Polypropylene and its like.
    Plastic,
    /// Wood.
    Wood,
}

impl Material {
    /// Every material, in the order lists are shown.
    pub const ALL: [Self; 7] = [
        Self::Steel,
        Self::Aluminium,
        Self::Copper,
        Self::Glass,
        Self::Ceramic,
        Self::Plastic,
        Self::Wood,
    ];

    /// Its specific heat.
    ///
    /// Source: OpenStax, *College Physics 2e*, table 14.1 (aluminium, copper, glass, wood; its
    /// steel is 452); stainless steel from Incropera, *Fundamentals of Heat and Mass Transfer*,
    /// table A.1; ceramic as glass. All from memory.
    #[must_use]
    pub const fn specific_heat(self) -> SpecificHeat {
        SpecificHeat::known(match self {
            Self::Steel => 477.0,
            Self::Aluminium => 900.0,
            Self::Copper => 387.0,
            Self::Glass | Self::Ceramic => 840.0,
            Self::Plastic => 1900.0,
            Self::Wood => 1700.0,
        })
    }
}

/// A bowl or pot with what it weighs and how warm it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vessel {
    /// What it is made of.
    pub material: Material,
    /// What it weighs empty.
    pub mass: Mass,
    /// How warm it is.
    pub temperature: Temperature,
    /// How much of it comes to the temperature of what is in it.
    pub warms: Share,
}

impl Vessel {
    /// Half of a bowl warms with what is in it. Common practice; the user may change it.
    pub const WARMS: f64 = 0.5;

    /// A bowl of which half warms.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never: half is a share.
    pub fn new(
        material: Material,
        mass: Mass,
        temperature: Temperature,
    ) -> Result<Self, HeatError> {
        Ok(Self {
            material,
            mass,
            temperature,
            warms: Share::from_fraction(Self::WARMS)?,
        })
    }

    /// The part of it that takes part in a mix.
    #[must_use]
    pub fn component(&self) -> HeatPart {
        HeatPart {
            of: "bowl".into(),
            mass: self.mass.component(self.warms),
            stuff: ThermalMaterial::Plain(self.material.specific_heat()),
            temperature: self.temperature,
        }
    }
}
