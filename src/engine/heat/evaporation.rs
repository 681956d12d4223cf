//! Evaporation: the water and the heat that leave an open wet surface into still air.

use super::boiling::saturation_pressure;
use super::error::HeatError;
use crate::engine::quantity::{Length, Mass, Minutes, Share, Temperature};

/// The air over an open surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenAir {
    /// How warm it is.
    pub temperature: Temperature,
    /// Its relative humidity.
    pub humidity: Share,
}

impl OpenAir {
    /// Half as moist as it can be. Common practice for a kitchen.
    pub const HUMIDITY: Share = Share::in_hundred(50.0);
}

/// What leaves a square metre.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Leaving {
    /// Heat by convection, radiation and evaporation, W/m².
    pub(super) heat: f64,
    /// Water, kg/(m²·s); never below zero: dew is left out.
    pub(super) water: f64,
}

/// The share of saturation that the surface of a cooked paste keeps: 0.98. Common practice for
/// wet foods of little sugar.
const WATER_ACTIVITY: f64 = 0.98;
/// Emissivity of a wet food. Source: Incropera, table A.11, water 0.96; from memory.
const EMISSIVITY: f64 = 0.95;
/// Stefan and Boltzmann's constant, W/(m²·K⁴).
const RADIATION: f64 = 5.670_374e-8;
/// The gas constant, J/(mol·K).
const GAS: f64 = 8.314_462;
/// Molar masses of dry air and of water, kg/mol.
const DRY_AIR: f64 = 0.028_964;
const WATER: f64 = 0.018_015;
/// Standard pressure, Pa.
const PRESSURE: f64 = 101_325.0;
/// Specific heat of air, J/(kg·K), its Prandtl number, and the fall of gravity, m/s².
const AIR_HEAT: f64 = 1007.0;
const PRANDTL: f64 = 0.712;
const GRAVITY: f64 = 9.81;
const ZERO_CELSIUS: f64 = 273.15;

/// What leaves a square metre of an open, level, wet surface `across` m wide that is `surface` °C
/// warm, in still `air`.
///
/// `h = 0.54·Ra^¼·k/L` with L a quarter of the width, buoyancy by the density of moist air;
/// `h_m = h / (ρ·c·Le^⅔)`; water `h_m·M/R·(a·p(T)/T − φ·p(Tₐ)/Tₐ)`, of which the share `wet`
/// leaves. No draught is counted.
///
/// Source: the Lewis relation and a heated plate facing up, Çengel, *Heat and Mass Transfer*.
pub(super) fn leaving(surface: f64, air: OpenAir, across: f64, wet: f64) -> Leaving {
    let room = air.temperature.celsius();
    let (hot, cool) = (surface + ZERO_CELSIUS, room + ZERO_CELSIUS);
    let vapour = WATER_ACTIVITY * saturation_pressure(surface);
    let moisture = air.humidity.fraction() * saturation_pressure(room);
    let density = |kelvin: f64, vapour: f64| {
        ((PRESSURE - vapour) * DRY_AIR + vapour * WATER) / (GAS * kelvin)
    };
    let (above, away) = (density(hot, vapour), density(cool, moisture));
    let film = surface.midpoint(room);
    let film_kelvin = film + ZERO_CELSIUS;
    let conductivity = 0.0241 + 7.2e-5 * film;
    let viscosity = 1.35e-5 + 9.5e-8 * film;
    let length = across / 4.0;
    let buoyancy = (away - above).abs() / above.midpoint(away);
    let rayleigh =
        GRAVITY * buoyancy * length * length * length / (viscosity * viscosity) * PRANDTL;
    let h = 0.54 * libm::sqrt(libm::sqrt(rayleigh.max(1.0))) * conductivity / length;
    let diffusion = 1.87e-10 * libm::pow(film_kelvin, 2.072);
    let lewis = libm::cbrt(viscosity / PRANDTL / diffusion);
    let film_density = PRESSURE * DRY_AIR / (GAS * film_kelvin);
    let h_m = h / (film_density * AIR_HEAT * lewis * lewis);
    let water = (wet * h_m * WATER / GAS * (vapour / hot - moisture / cool)).max(0.0);
    let fourth = |kelvin: f64| kelvin * kelvin * kelvin * kelvin;
    let radiated = EMISSIVITY * RADIATION * (fourth(hot) - fourth(cool));
    let latent = 2_500_900.0 - 2_386.0 * surface;
    Leaving {
        heat: h * (surface - room) + radiated + water * latent,
        water,
    }
}

/// An open bowl being stirred for some time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stirring {
    /// The air over it.
    pub air: OpenAir,
    /// How wide the open surface is.
    pub across: Length,
    /// How long it is stirred.
    pub minutes: Minutes,
    /// The most that leaves, where the food was weighed.
    pub at_most: Option<Mass>,
}

impl Stirring {
    /// How long a paste steams in the open as it is stirred. Common practice: until no dry spot is
    /// left, about half a minute.
    pub const USUAL: Minutes = Minutes::known(0.5);

    /// The water that leaves at `t` °C, g. A surface hardly warmer than the room gives off little:
    /// from 40 °C down the rate fades, to none at 30 °C.
    pub(super) fn grams_at(&self, t: f64) -> f64 {
        let across = self.across.metres();
        let area = std::f64::consts::PI * across * across / 4.0;
        let rate = leaving(t.clamp(30.0, 100.0), self.air, across, 1.0).water;
        let fades = ((t - 30.0) / 10.0).clamp(0.0, 1.0);
        let grams = rate * area * 1000.0 * self.minutes.minutes() * 60.0 * fades;
        self.at_most.map_or(grams, |most| grams.min(most.grams()))
    }

    /// The heat that water takes along, J.
    pub(super) fn heat_at(&self, t: f64) -> f64 {
        self.grams_at(t) * LATENT
    }
}

/// Heat that a gram of water takes along, J: at 70 °C, half-way over the temperatures of a paste.
/// Source: IAPWS-95, 2333 J/g; 2406 at 40 °C, 2257 at 100 °C.
pub(super) const LATENT: f64 = 2333.0;

/// The water that leaves a round open surface of a wet food that stays at one temperature.
///
/// ```
/// use softcrumb::engine::heat::{OpenAir, evaporated};
/// use softcrumb::engine::quantity::{Length, Minutes, Temperature};
///
/// let air = OpenAir {
///     temperature: Temperature::from_celsius(20.0)?,
///     humidity: OpenAir::HUMIDITY,
/// };
/// let at = Temperature::from_celsius(60.0)?;
/// let minute = Minutes::from_minutes(1.0)?;
/// let steam = evaporated(at, air, Length::from_metres(0.12)?, minute)?;
/// assert!((0.5..1.0).contains(&steam.grams()));
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn evaporated(
    surface: Temperature,
    air: OpenAir,
    across: Length,
    time: Minutes,
) -> Result<Mass, HeatError> {
    let area = std::f64::consts::PI * across.metres() * across.metres() / 4.0;
    let rate = leaving(surface.celsius().min(100.0), air, across.metres(), 1.0).water;
    Ok(Mass::from_grams(
        rate * area * 1000.0 * time.minutes() * 60.0,
    )?)
}
