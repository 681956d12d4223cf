//! The cooling that is timed: a heap of cooked paste, twelve hours of bench and fridge.

use softcrumb::engine::heat::{Air, Body, Exposure, HeatError, Shape};
use softcrumb::engine::quantity::{
    Conductivity, Density, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient, Temperature,
};

/// From the middle to the surface, m.
pub(crate) const HALF: f64 = 0.05;
/// What it weighs, g.
pub(crate) const MASS: f64 = 550.0;
/// What it takes to warm, J/(kg·K).
pub(crate) const SPECIFIC_HEAT: f64 = 3400.0;
/// How it conducts, W/(m·K).
pub(crate) const CONDUCTIVITY: f64 = 0.5;
/// How dense it is, kg/m³.
pub(crate) const DENSITY: f64 = 1050.0;
/// How warm it is at first, °C.
pub(crate) const START: f64 = 75.0;
/// Its surroundings: min, °C, W/(m²·K).
pub(crate) const STAYS: [(f64, f64, f64); 2] = [(30.0, 21.0, 9.0), (690.0, 4.0, 9.0)];

/// The food that is cooled, its temperature, and its surroundings.
pub(crate) fn case() -> Result<(Body, Temperature, Vec<Exposure>), HeatError> {
    let body = Body {
        shape: Shape::Sphere,
        half: Length::from_metres(HALF)?,
        mass: Mass::from_grams(MASS)?,
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(SPECIFIC_HEAT)?,
        conductivity: Conductivity::from_watts_per_metre_kelvin(CONDUCTIVITY)?,
        density: Density::from_kilograms_per_cubic_metre(DENSITY)?,
    };
    let mut stays = Vec::with_capacity(STAYS.len());
    for (minutes, air, coefficient) in STAYS {
        stays.push(Exposure {
            minutes: Minutes::from_minutes(minutes)?,
            air: Air {
                temperature: Temperature::from_celsius(air)?,
                coefficient: SurfaceCoefficient::from_watts_per_square_metre_kelvin(coefficient)?,
            },
        });
    }
    Ok((body, Temperature::from_celsius(START)?, stays))
}
