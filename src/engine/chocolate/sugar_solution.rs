//! Sugar solution: how thick sugared water is.

use super::density::Densities;
use crate::engine::quantity::{Density, OutOfRange, Share, Temperature, Viscosity};

/// The viscosity of pure sucrose in water.
///
/// `log10 η = 22.46·N − 0.114 + Φ·(1.1 + 43.1·N^1.25)` with η in mPa·s, `N = B / (1900 − 18·B)`
/// the mole fraction of sucrose, B per cent of sugar by mass, and `Φ = (30 − t) / (91 + t)`, t in
/// °C. Holds to about 3 % from 10 to 80 °C and 0 to 70 %. Below zero and above 100 °C the value at
/// that end is given. Above 85 % sugar the value at 85 % is given.
///
/// Source: Génotelle, Industries alimentaires et agricoles 95 (1978) 747 (equation from memory,
/// checked against Bingham and Jackson 1918).
///
/// # Errors
/// [`OutOfRange`] never for a share and a temperature in range; kept because the answer is ranged.
pub fn viscosity(sugar: Share, temperature: Temperature) -> Result<Viscosity, OutOfRange> {
    let t = temperature.celsius().clamp(0.0, 100.0);
    let milli = genotelle(sugar.percent().min(85.0), t);
    Viscosity::from_pascal_seconds(milli / 1000.0)
}

/// The density of sucrose in water, the two taking the room each takes alone.
///
/// `1 / ρ = s / ρ₁ + (1 − s) / ρ₂`, with s the share of sugar by mass. Within 1.5 % of the table
/// of saturated solutions.
///
/// Source: Choi and Okos, in *Food Engineering and Process Applications* vol. 1 (1986) 93–101.
///
/// # Errors
/// [`OutOfRange`] never for a temperature in range; kept because the answer is ranged.
pub fn density(sugar: Share, temperature: Temperature) -> Result<Density, OutOfRange> {
    let d = Densities::at(temperature.celsius());
    let s = sugar.fraction().min(1.0);
    let room = s / d.carbohydrate + (1.0 - s) / d.water;
    Density::from_kilograms_per_cubic_metre(1000.0 / room)
}

/// The mole fraction of sucrose in a solution of `percent` by mass, as the equation takes it.
pub(super) fn mole_fraction(percent: f64) -> f64 {
    percent / (1900.0 - 18.0 * percent)
}

/// The temperature term of the equation, `t` in °C.
pub(super) fn temperature_term(t: f64) -> f64 {
    (30.0 - t) / (91.0 + t)
}

/// mPa·s, for `percent` up to 85 and `t` above −91 °C.
pub(super) fn genotelle(percent: f64, t: f64) -> f64 {
    let n = mole_fraction(percent);
    let exponent = 22.46 * n - 0.114 + temperature_term(t) * (1.1 + 43.1 * libm::pow(n, 1.25));
    libm::pow(10.0, exponent)
}
