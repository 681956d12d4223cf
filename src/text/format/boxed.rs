//! A figure's text for a box: to be edited, so without groups or unit, never in two units.

use super::figure::{MINUS, to_significant};
use super::quantity::percent_places;
use crate::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};
use crate::text::{
    format_options::{FormatOptions, NumberStyle},
    unit::MassUnit,
};

/// A weight: "312.5", in the unit of this device.
#[must_use]
pub fn box_mass(mass: Mass, options: FormatOptions) -> String {
    let number = options.units.mass.number_of(mass);
    let places = match options.units.mass {
        MassUnit::Grams if number >= 1.0 => 2,
        MassUnit::Grams | MassUnit::Ounces => 3,
    };
    boxed(number, places, options)
}

/// A mass that nobody typed, in digits that a baker weighs: "919", "91.9".
#[must_use]
pub fn box_own_mass(mass: Mass, options: FormatOptions) -> String {
    let number = options.units.mass.number_of(mass);
    let places = match options.units.mass {
        MassUnit::Grams if number >= 100.0 => 0,
        MassUnit::Grams => 1,
        MassUnit::Ounces => 2,
    };
    boxed(number, places, options)
}

/// A share in percent: "66.4".
#[must_use]
pub fn box_share(share: Share, options: FormatOptions) -> String {
    let percent = share.percent();
    boxed(percent, if percent < 10.0 { 3 } else { 2 }, options)
}

/// A figure of the dough in percent, with the decimals that it has everywhere else: "64.7", "1.79".
#[must_use]
pub fn box_figure(share: Share, options: FormatOptions) -> String {
    let percent = share.percent();
    boxed(percent, percent_places(percent), options)
}

/// A baker's percentage, to the tenth: "12.1"; with two or three decimals where it is small.
#[must_use]
pub fn box_percentage(share: Share, options: FormatOptions) -> String {
    let percent = share.percent();
    let places = match percent {
        small if small < 0.1 => 3,
        small if small < 1.0 => 2,
        _ => 1,
    };
    boxed(percent, places, options)
}

/// A temperature on the scale of this device: "24.5".
#[must_use]
pub fn box_temperature(temperature: Temperature, options: FormatOptions) -> String {
    boxed(options.units.temperature.number_of(temperature), 1, options)
}

/// A factor: "1.25".
#[must_use]
pub fn box_factor(factor: Factor, options: FormatOptions) -> String {
    let (number, places) = to_significant(factor.number(), 6);
    boxed(number, places, options)
}

/// Parts to one part: "3.56".
#[must_use]
pub fn box_parts(components: Factor, options: FormatOptions) -> String {
    let (number, places) = to_significant(components.number(), 3);
    boxed(number, places, options)
}

/// A number of whole things: "9".
#[must_use]
pub fn box_count(count: impl Into<u32>, options: FormatOptions) -> String {
    boxed(f64::from(count.into()), 0, options)
}

/// A thickness in Pa·s: "0.28".
#[must_use]
pub fn box_viscosity(viscosity: Viscosity, options: FormatOptions) -> String {
    let (number, places) = to_significant(viscosity.pascal_seconds(), 3);
    boxed(number, places, options)
}

/// Digits, a decimal mark, and a minus as it is typed.
pub(super) fn boxed(number: f64, places: usize, options: FormatOptions) -> String {
    let style = NumberStyle {
        group: None,
        ..options.numbers
    };
    super::plain(number, places, style).replace(MINUS, "-")
}
