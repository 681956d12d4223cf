//! Each kind of quantity with its number of digits and its unit.

use super::figure::{digits, figure, plain, significant};
use crate::engine::quantity::{Division, Factor, Mass, Share, Temperature, Viscosity};
use crate::text::{
    format_options::{FormatOptions, NumberStyle},
    tr,
    unit::{MassUnit, OUNCES_IN_POUND, TemperatureUnit},
};

/// Separates a figure and its unit without a line break.
pub(super) const GAP: char = '\u{A0}';

/// From here on grams are printed as kilograms, to the gram.
const KILOGRAMS_FROM: f64 = 10_000.0;

/// A thickness above this, Pa·s, is a solid to the hand.
const SOLID: f64 = 10_000.0;

/// A weight: "0.47 g", "7.3 g", "312 g", "12.345 kg", "4.2 oz", "1 lb 3.4 oz".
///
/// A weight that is a whole number of the next division is printed with it: 312.5 g stays.
#[must_use]
pub fn mass(mass: Mass, options: FormatOptions) -> String {
    match options.units.mass {
        MassUnit::Grams => grams(mass.grams(), options.numbers),
        MassUnit::Ounces => ounces(options.units.mass.number_of(mass), options.numbers),
    }
}

/// A weight as a scale with this division shows it: "4.0 g" on a scale that shows tenths.
#[must_use]
pub fn mass_weighed(weight: Mass, division: Division, options: FormatOptions) -> String {
    match options.units.mass {
        MassUnit::Grams => {
            let places = places_of(division);
            with_unit(&figure(weight.grams(), places, options.numbers), "g")
        }
        MassUnit::Ounces => mass(weight, options),
    }
}

/// A scale's division: "0.1 g". Always in grams, as scales have it printed on them.
#[must_use]
pub fn division(division: Division, options: FormatOptions) -> String {
    with_unit(&plain(division.grams(), 2, options.numbers), "g")
}

/// A share in percent: "66.4 %", "1.85 %".
#[must_use]
pub fn share(share: Share, options: FormatOptions) -> String {
    percent(share.percent(), options.numbers)
}

/// A baker's percentage in words: "66.4 % of flour".
#[must_use]
pub fn of_flour(of_flour: Share, options: FormatOptions) -> String {
    tr!("{value} of flour", value = share(of_flour, options))
}

/// A temperature: "24.5 °C", "76 °F".
#[must_use]
pub fn temperature(temperature: Temperature, options: FormatOptions) -> String {
    let scale = options.units.temperature;
    let text = degrees(scale.number_of(temperature), scale, options.numbers);
    with_unit(&text, scale.symbol())
}

/// A factor: "× 1.25".
#[must_use]
pub fn factor(factor: Factor, options: FormatOptions) -> String {
    format!("×{GAP}{}", significant(factor.number(), 4, options.numbers))
}

/// A factor for bakers: "× 2.8".
#[must_use]
pub fn times(factor: Factor, options: FormatOptions) -> String {
    format!("×{GAP}{}", significant(factor.number(), 2, options.numbers))
}

/// A number of whole things.
#[must_use]
pub fn count(count: impl Into<u32>, options: FormatOptions) -> String {
    plain(f64::from(count.into()), 0, options.numbers)
}

/// A thickness to two figures: "0.28 Pa·s", "4.2 mPa·s".
#[must_use]
pub fn viscosity(viscosity: Viscosity, options: FormatOptions) -> String {
    let thickness = viscosity.pascal_seconds();
    let style = options.numbers;
    if thickness > SOLID {
        let most = with_unit(&plain(SOLID, 0, style), tr!("Pa·s"));
        tr!("over {most}", most = most)
    } else if thickness < 0.01 {
        with_unit(&significant(thickness * 1000.0, 2, style), "mPa·s")
    } else {
        with_unit(&significant(thickness, 2, style), tr!("Pa·s"))
    }
}

/// Between a figure and its unit; nothing before a unit in Japanese letters.
fn gap(unit: &str) -> &'static str {
    if unit.starts_with(|letter| letter > '\u{3000}') {
        ""
    } else {
        "\u{A0}"
    }
}

/// A figure, the gap, its unit.
pub(super) fn with_unit(figure: &str, unit: &str) -> String {
    if unit.is_empty() {
        figure.to_owned()
    } else {
        format!("{figure}{}{unit}", gap(unit))
    }
}

/// Grams, kilograms for large ones.
pub(super) fn grams(grams: f64, style: NumberStyle) -> String {
    if grams >= KILOGRAMS_FROM {
        return with_unit(&plain(grams / 1000.0, 3, style), "kg");
    }
    let places = match grams {
        size if size < 1.0 || (size < 100.0 && is_whole(size * 100.0)) => 2,
        size if size < 100.0 || is_whole(size * 10.0) => 1,
        _ => 0,
    };
    with_unit(&seen(grams, places, style), "g")
}

/// Ounces, pounds and ounces for large ones.
fn ounces(ounces: f64, style: NumberStyle) -> String {
    let tenths = libm::round(ounces * 10.0);
    let pounds = libm::floor(tenths / (10.0 * OUNCES_IN_POUND));
    if pounds < 1.0 {
        let places = match ounces {
            size if size < 1.0 => 3,
            size if size < 10.0 => 2,
            _ => 1,
        };
        return with_unit(&seen(ounces, places, style), "oz");
    }
    let over = (tenths - pounds * 10.0 * OUNCES_IN_POUND) / 10.0;
    let pounds = with_unit(&plain(pounds, 0, style), "lb");
    if over > 0.0 {
        format!("{pounds} {}", with_unit(&plain(over, 1, style), "oz"))
    } else {
        pounds
    }
}

/// A figure that is never rounded away to nought: "under 0.01".
fn seen(value: f64, places: usize, style: NumberStyle) -> String {
    let rounded_away = digits(value, places).is_some_and(|digits| digits.is_nought());
    if value > 0.0 && rounded_away {
        let least = 1.0 / super::figure::ten_to(places);
        tr!("under {value}", value = plain(least, places, style))
    } else {
        plain(value, places, style)
    }
}

/// Percent with its sign.
pub(super) fn percent(percent: f64, style: NumberStyle) -> String {
    let places = percent_places(percent);
    with_unit(&seen(percent, places, style), "%")
}

/// The decimals of a percentage.
pub(super) fn percent_places(percent: f64) -> usize {
    match percent.abs() {
        size if size < 10.0 => 2,
        size if size < 1000.0 => 1,
        _ => 0,
    }
}

/// Degrees of a scale: tenths of °C below boiling, whole degrees otherwise.
pub(super) fn degrees(degrees: f64, scale: TemperatureUnit, style: NumberStyle) -> String {
    let places = match scale {
        TemperatureUnit::Celsius if degrees.abs() < 100.0 => 1,
        TemperatureUnit::Celsius | TemperatureUnit::Fahrenheit => 0,
    };
    plain(degrees, places, style)
}

/// The decimals a scale with this division shows.
fn places_of(division: Division) -> usize {
    (0..2)
        .find(|places| is_whole(division.grams() * super::figure::ten_to(*places)))
        .unwrap_or(2)
}

/// Whether a number is whole, to the noise of a few sums.
fn is_whole(value: f64) -> bool {
    (value - libm::round(value)).abs() <= 1e-6
}
