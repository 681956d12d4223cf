//! A food in a round vessel and the places it is put in: what the cooling in a vessel starts from.

use super::error::HeatError;
use super::matter::Matter;
use super::properties::Properties;
use super::vessel_grid::Filled;
use crate::engine::quantity::{
    Conductivity, Density, HeatCapacity, Length, Mass, Minutes, Share, SpecificHeat,
    SurfaceCoefficient, Temperature,
};

/// A food that fills a round vessel to some depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The inner width of the vessel.
    pub across: Length,
    /// How deep the food lies.
    pub deep: Length,
    /// What the food weighs.
    pub mass: Mass,
    /// Its specific heat.
    pub specific_heat: SpecificHeat,
    /// Its conductivity.
    pub conductivity: Conductivity,
    /// Its density.
    pub density: Density,
    /// Heat capacity of the part of the vessel that the food touches.
    pub vessel: HeatCapacity,
    /// How warm the vessel is at first.
    pub vessel_at: Temperature,
}

/// What lies over the food.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cover {
    /// Nothing: water evaporates into air of this relative humidity.
    Open(Share),
    /// Nothing, but the surface has dried to a skin: half as much evaporates.
    Skin(Share),
    /// Nothing: so much of what an open surface gives off evaporates, as weighings have it.
    Wet {
        /// The relative humidity of the air.
        humidity: Share,
        /// The share of what an open surface gives off.
        share: Share,
    },
    /// A film or a lid with air under it: nothing evaporates.
    Closed,
    /// The same as at the side: a bag, or a vessel under water.
    Surrounded,
}

/// Some time in one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VesselStay {
    /// How long.
    pub minutes: Minutes,
    /// How warm the air or water round the vessel is.
    pub around: Temperature,
    /// How readily heat passes at the side and underneath.
    pub coefficient: SurfaceCoefficient,
    /// What lies over the food.
    pub cover: Cover,
}

impl VesselStay {
    /// Through a film or a lid with air under it. Source: two films of still air in a row,
    /// 9 and 15 W/(m²·K) with radiation; computed.
    pub const CLOSED: SurfaceCoefficient = SurfaceCoefficient::known(6.0);
    /// At the side and underneath, on a bench. Source: free convection and radiation, Churchill and
    /// Chu 1975, 8 to 10 W/(m²·K) for a wall of 30 to 60 °C; the bench keeps some of it in.
    pub const BENCH: SurfaceCoefficient = SurfaceCoefficient::known(8.0);
    /// In a household fridge: convection 1.3 to 2.8 W/(m²·K), radiation as large again; formulas for
    /// free convection give 10 to 14. Slow and quick ends: 4 and 9.
    ///
    /// Source: *Energies* 2025, 18:6280; Laguerre 2010.
    pub const FRIDGE: SurfaceCoefficient = SurfaceCoefficient::known(6.0);

    /// Through a cover, W/(m²·K): three quarters of what passes at the side, and never more than
    /// two films of still air let through.
    pub(super) fn closed(&self) -> f64 {
        let beside = self.coefficient.watts_per_square_metre_kelvin();
        (0.75 * beside).min(Self::CLOSED.watts_per_square_metre_kelvin())
    }
}

impl Cover {
    /// Whether water evaporates.
    pub(super) const fn is_open(self) -> bool {
        matches!(self, Self::Open(_) | Self::Skin(_) | Self::Wet { .. })
    }
}

impl Filling {
    /// So much of this food in a vessel, its properties taken half-way between two temperatures.
    ///
    /// `d = m / (ρ·π·r²)`.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] without food; [`HeatError::OffScale`] when a property or the depth
    /// leaves its range.
    pub fn of(
        food: &Matter,
        mass: Mass,
        across: Length,
        vessel: HeatCapacity,
        (start, vessel_at): (Temperature, Temperature),
    ) -> Result<Self, HeatError> {
        if mass <= Mass::ZERO {
            return Err(HeatError::EmptyBowl);
        }
        let middle = Temperature::from_celsius(start.celsius().midpoint(10.0))?;
        let properties = Properties::of(food, middle)?;
        let density = properties.density.kilograms_per_cubic_metre();
        let radius = across.metres() / 2.0;
        let area = std::f64::consts::PI * radius * radius;
        Ok(Self {
            across,
            deep: Length::from_metres(mass.grams() / 1000.0 / density / area)?,
            mass,
            specific_heat: properties.specific_heat,
            conductivity: properties.conductivity,
            density: properties.density,
            vessel,
            vessel_at,
        })
    }

    pub(super) const fn grid(&self) -> Filled {
        Filled {
            radius: self.across.metres() / 2.0,
            depth: self.deep.metres(),
            conductivity: self.conductivity.watts_per_metre_kelvin(),
            heat_per_volume: self.density.kilograms_per_cubic_metre()
                * self.specific_heat.joules_per_kilogram_kelvin(),
            vessel: self.vessel.joules_per_kelvin(),
        }
    }
}
