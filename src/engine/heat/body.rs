//! Bodies that cool or warm from outside: how thick, of what shape, of what food.

use super::cooling_factors::CoolingFactors;
use super::error::HeatError;
use super::matter::Matter;
use super::properties::Properties;
use crate::engine::quantity::{
    Conductivity, Density, Length, Mass, SpecificHeat, SurfaceCoefficient, Temperature,
};

/// The shape of a body, as conduction sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shape {
    /// Flat and wide: spread in a dish or a bag, laid on a tray.
    Slab,
    /// Long and round: a roll, a log, a tall jar.
    Cylinder,
    /// A ball, or a heap about as deep as wide.
    Sphere,
}

impl Shape {
    /// Every shape, in the order lists are shown.
    pub const ALL: [Self; 3] = [Self::Slab, Self::Cylinder, Self::Sphere];

    /// The power of the distance from the middle that the area grows with.
    pub(super) const fn power(self) -> u8 {
        match self {
            Self::Slab => 0,
            Self::Cylinder => 1,
            Self::Sphere => 2,
        }
    }
}

/// Something that cools or warms from outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Body {
    /// Its shape.
    pub shape: Shape,
    /// From the middle to the surface: half the thickness of a slab, else the radius. Where a slab
    /// stands on something that keeps heat in, this is its whole thickness.
    pub half: Length,
    /// What it weighs.
    pub mass: Mass,
    /// Its specific heat.
    pub specific_heat: SpecificHeat,
    /// Its conductivity.
    pub conductivity: Conductivity,
    /// Its density.
    pub density: Density,
}

/// What surrounds a body for some time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// How warm it is.
    pub temperature: Temperature,
    /// How readily heat passes to it.
    pub coefficient: SurfaceCoefficient,
}

impl Air {
    /// Still air of a room or a fridge round a food of hand's size, radiation included.
    ///
    /// Source: Churchill and Chu 1975 for free convection, with radiation at an emissivity of 0.9:
    /// 8.9 to 12.4 W/(m²·K) for surfaces of 25 to 60 °C in air of 20 °C, 10.2 to 12.7 in air of
    /// 4 °C. The lower end is taken, so that nothing cools faster here than in the kitchen.
    pub const STILL: SurfaceCoefficient = SurfaceCoefficient::known(9.0);

    /// Ice water round a bowl or bag, stirred now and then: the wall and the film inside it govern.
    /// Common practice.
    pub const ICE_BATH: SurfaceCoefficient = SurfaceCoefficient::known(150.0);

    /// A hot water bath under or round a bowl, unstirred inside. Common practice.
    pub const WATER_BATH: SurfaceCoefficient = SurfaceCoefficient::known(150.0);

    /// Still air of a kitchen with these factors.
    #[must_use]
    pub fn of_kitchen(temperature: Temperature, factors: &CoolingFactors) -> Self {
        Self {
            temperature,
            coefficient: factors.likely_air(Self::STILL),
        }
    }

    /// Still air.
    #[must_use]
    pub const fn still(temperature: Temperature) -> Self {
        Self {
            temperature,
            coefficient: Self::STILL,
        }
    }
}

impl Body {
    /// A body of this food, its properties taken half-way between the two temperatures.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when a property leaves its range.
    pub fn of(
        food: &Matter,
        mass: Mass,
        shape: Shape,
        half: Length,
        between: (Temperature, Temperature),
    ) -> Result<Self, HeatError> {
        Ok(Self::with(&half_way(food, between)?, mass, shape, half))
    }

    /// All of this food as one ball, its properties taken half-way between the two temperatures.
    ///
    /// `r = (3·m / (4·π·ρ))^(1/3)`.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when a property leaves its range, or the ball is too small or too
    /// large to be handled.
    pub fn ball_of(
        food: &Matter,
        mass: Mass,
        between: (Temperature, Temperature),
    ) -> Result<Self, HeatError> {
        let properties = half_way(food, between)?;
        let density = properties.density.kilograms_per_cubic_metre();
        let cube = 3.0 * mass.grams() / 1000.0 / (4.0 * std::f64::consts::PI * density);
        let radius = Length::from_metres(libm::cbrt(cube))?;
        Ok(Self::with(&properties, mass, Shape::Sphere, radius))
    }

    const fn with(properties: &Properties, mass: Mass, shape: Shape, half: Length) -> Self {
        Self {
            shape,
            half,
            mass,
            specific_heat: properties.specific_heat,
            conductivity: properties.conductivity,
            density: properties.density,
        }
    }

    /// One of `pieces` equal pieces, of the same shape in the small: `half` shrinks as the cube root.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when a piece would be too small to be handled.
    pub fn shared_out(self, pieces: u16) -> Result<Self, HeatError> {
        let pieces = f64::from(pieces.max(1));
        Ok(Self {
            half: Length::from_metres(self.half.metres() / libm::cbrt(pieces))?,
            mass: Mass::from_grams(self.mass.grams() / pieces)?,
            ..self
        })
    }
}

/// The properties of a food half-way between two temperatures.
fn half_way(food: &Matter, between: (Temperature, Temperature)) -> Result<Properties, HeatError> {
    let middle = between.0.celsius().midpoint(between.1.celsius());
    Properties::of(food, Temperature::from_celsius(middle)?)
}
