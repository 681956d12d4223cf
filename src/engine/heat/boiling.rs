//! Boiling: how hot water gets in this kitchen.

use super::error::HeatError;
use crate::engine::quantity::{Altitude, Pressure, Temperature};
use crate::engine::working::{WorkingLine, given};

/// Where water boils, and the air pressure that decides it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Boiling {
    /// The altitude it was worked out from, where it was.
    pub altitude: Option<Altitude>,
    /// The pressure of the air.
    pub pressure: Pressure,
    /// Where water boils under it.
    pub temperature: Temperature,
}

/// The earth's radius that turns altitude into geopotential height, m.
const EARTH: f64 = 6_356_766.0;
/// Standard pressure at sea level, hPa.
const SEA_LEVEL: f64 = 1013.25;
/// Standard temperature at sea level over its fall with height, m: 288.15 K / 0.0065 K/m.
const SCALE: f64 = 288.15 / 0.0065;
/// g·M / (R·0.0065): the power of the standard atmosphere.
const POWER: f64 = 5.255_88;

const ATMOSPHERE: &str = "ICAO standard atmosphere, ISO 2533:1975";
const SATURATION: &str = "IAPWS-IF97, region 4, equation 31";

/// Where water boils at this altitude on a day of standard weather.
///
/// `p = 1013.25·(1 − h·0.0065/288.15)^5.25588` with h the geopotential height in m, p in hPa.
/// Weather moves the pressure by ±30 hPa, and the boiling point by about ±0.8 °C.
///
/// Source: ICAO standard atmosphere (ISO 2533:1975); IAPWS-IF97.
///
/// # Errors
/// [`HeatError::OffScale`] never within [`Altitude::RANGE`].
pub fn boiling_at(altitude: Altitude) -> Result<Boiling, HeatError> {
    let geometric = altitude.metres();
    let height = EARTH * geometric / (EARTH + geometric);
    let hectopascals = SEA_LEVEL * libm::pow(1.0 - height / SCALE, POWER);
    let pressure = Pressure::from_hectopascals(hectopascals)?;
    Ok(Boiling {
        altitude: Some(altitude),
        ..boiling_under(pressure)?
    })
}

/// Where water boils under this pressure: the saturation line of water turned round.
///
/// Source: IAPWS, *Industrial Formulation 1997*, region 4, equation 31.
///
/// # Errors
/// [`HeatError::OffScale`] never within [`Pressure::RANGE`].
pub fn boiling_under(pressure: Pressure) -> Result<Boiling, HeatError> {
    let celsius = Saturation::under(pressure.hectopascals()).celsius;
    Ok(Boiling {
        altitude: None,
        pressure,
        temperature: Temperature::from_celsius(celsius)?,
    })
}

/// The numbers met on the saturation line, in the formulation's letters; b is its β.
struct Saturation {
    b: f64,
    e: f64,
    f: f64,
    g: f64,
    d: f64,
    celsius: f64,
}

impl Saturation {
    /// Takes hPa; the formulation counts in megapascals.
    fn under(hectopascals: f64) -> Self {
        let b = libm::pow(hectopascals * 1e-4, 0.25);
        let e = b * b - 17.073_846_940_092 * b + 14.915_108_613_53;
        let f = 1_167.052_145_276_7 * b * b + 12_020.824_702_47 * b - 4_823.265_736_159_1;
        let g = -724_213.167_032_06 * b * b - 3_232_555.032_233_3 * b + 405_113.405_420_57;
        let d = 2.0 * g / (-f - libm::sqrt(f * f - 4.0 * e * g));
        let sum = 650.175_348_447_98 + d;
        let product = 650.175_348_447_98 * d - 0.238_555_575_678_49;
        let kelvin = (sum - libm::sqrt(sum * sum - 4.0 * product)) / 2.0;
        Self {
            b,
            e,
            f,
            g,
            d,
            celsius: kelvin - 273.15,
        }
    }
}

/// The pressure of saturated vapour over water of so many °C, Pa; below 0 °C that at 0 °C.
///
/// Source: IAPWS, *Industrial Formulation 1997*, region 4, equation 30.
pub(super) fn saturation_pressure(celsius: f64) -> f64 {
    let t = celsius.clamp(0.0, 370.0) + 273.15;
    let d = t - 0.238_555_575_678_49 / (t - 650.175_348_447_98);
    let a = d * d + 1_167.052_145_276_7 * d - 724_213.167_032_06;
    let b = -17.073_846_940_092 * d * d + 12_020.824_702_47 * d - 3_232_555.032_233_3;
    let c = 14.915_108_613_53 * d * d - 4_823.265_736_159_1 * d + 405_113.405_420_57;
    let root = 2.0 * c / (-b + libm::sqrt(b * b - 4.0 * a * c));
    1e6 * root * root * root * root
}

impl Boiling {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = Vec::with_capacity(6);
        let p = self.pressure.hectopascals();
        if let Some(altitude) = self.altitude {
            lines.push(WorkingLine {
                rule: "1013.25 × (1 − 0.0065 / 288.15 × z × R / (R + z))^5.25588".into(),
                with: vec![
                    given("z", "altitude", altitude.metres(), "m"),
                    given("R", "radius of the earth", EARTH, "m"),
                ],
                result: given("p", "pressure of the air", p, "hPa"),
                source: ATMOSPHERE.into(),
            });
        }
        lines.extend(saturation_lines(p, self.temperature));
        lines
    }
}

/// The saturation line, step by step.
fn saturation_lines(p: f64, boils: Temperature) -> Vec<WorkingLine> {
    let Saturation { b, e, f, g, d, .. } = Saturation::under(p);
    let line = |rule: &'static str, with, result| WorkingLine {
        rule: rule.into(),
        with,
        result,
        source: SATURATION.into(),
    };
    let one = |letter: &'static str, value| given(letter, "", value, "");
    vec![
        line(
            "(p / 10000)^0.25",
            vec![given("p", "pressure of the air", p, "hPa")],
            one("b", b),
        ),
        line(
            "b^2 − 17.073846940092 × b + 14.91510861353",
            vec![one("b", b)],
            one("e", e),
        ),
        line(
            "1167.0521452767 × b^2 + 12020.82470247 × b − 4823.2657361591",
            vec![one("b", b)],
            one("f", f),
        ),
        line(
            "405113.40542057 − 724213.16703206 × b^2 − 3232555.0322333 × b",
            vec![one("b", b)],
            one("g", g),
        ),
        line(
            "2 × g / (0 − f − sqrt(f^2 − 4 × e × g))",
            vec![one("e", e), one("f", f), one("g", g)],
            one("d", d),
        ),
        line(
            "(650.17534844798 + d − sqrt((650.17534844798 + d)^2 − 4 × (650.17534844798 × d − 0.23855557567849))) / 2 − 273.15",
            vec![one("d", d)],
            given("T", "boiling", boils.celsius(), "°C"),
        ),
    ]
}
