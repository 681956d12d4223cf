//! Changes with their sign, old against new, ranges.

use super::figure::{digits, plain};
use super::quantity::{degrees, grams, with_unit};
use crate::engine::quantity::{Mass, MassChange, Share, Temperature, TemperatureChange};
use crate::text::{format_options::FormatOptions, language::text, tr, tr_noop, unit::MassUnit};

/// The text for a change that rounds to zero.
const NO_CHANGE: &str = tr_noop!("no change");

/// A change of weight from old to new: "+12 g", "−3.5 g", "no change".
#[must_use]
pub fn mass_change(old: Mass, new: Mass, options: FormatOptions) -> String {
    mass_difference(new - old, options)
}

/// A difference of weight: "+12 g", "−3.5 g", "no change".
#[must_use]
pub fn mass_difference(change: MassChange, options: FormatOptions) -> String {
    match options.units.mass {
        MassUnit::Grams => signed(change.grams(), 2, |size| grams(size, options.numbers)),
        MassUnit::Ounces => {
            let ounces = change.grams() / MassUnit::Ounces.grams();
            signed(ounces, 3, |size| {
                let places = if size < 1.0 { 3 } else { 1 };
                with_unit(&plain(size, places, options.numbers), "oz")
            })
        }
    }
}

/// A change of a share, in points of a hundred: 65 % to 67 % is "+2 points".
#[must_use]
pub fn points_change(old: Share, new: Share, options: FormatOptions) -> String {
    signed(new.percent() - old.percent(), 2, |points| {
        let places = if points < 10.0 { 2 } else { 1 };
        let figure = plain(points, places, options.numbers);
        let unit = if figure == "1" {
            tr!("point")
        } else {
            tr!("points")
        };
        with_unit(&figure, unit)
    })
}

/// How much larger or smaller in percent: 200 g to 210 g is "+5 %". `None` from nothing.
#[must_use]
pub fn relative_change(old: Mass, new: Mass, options: FormatOptions) -> Option<String> {
    if old.grams() <= 0.0 {
        return None;
    }
    let percent = (new - old).grams() / old.grams() * 100.0;
    Some(signed(percent, 1, |size| {
        with_unit(&plain(size, 1, options.numbers), "%")
    }))
}

/// A change of temperature: "+2.5 °C".
#[must_use]
pub fn temperature_change(change: TemperatureChange, options: FormatOptions) -> String {
    let scale = options.units.temperature;
    signed(scale.degrees_of(change), 1, |size| {
        with_unit(&plain(size, 1, options.numbers), scale.symbol())
    })
}

/// Old and new side by side: "312 g → 330 g".
#[must_use]
pub fn from_to(old: &str, new: &str) -> String {
    format!("{old} → {new}")
}

/// A range with its unit: "55 to 70 min"; a single figure where both ends print alike.
#[must_use]
pub fn range(low: f64, high: f64, places: usize, unit: &str, options: FormatOptions) -> String {
    let low = plain(low, places, options.numbers);
    let high = plain(high, places, options.numbers);
    let figures = if low == high {
        low
    } else {
        tr!("{low} to {high}", low = low, high = high)
    };
    with_unit(&figures, unit)
}

/// A range of shares: "3 to 16 %".
#[must_use]
pub fn share_range(low: Share, high: Share, options: FormatOptions) -> String {
    range(low.percent(), high.percent(), 2, "%", options)
}

/// A range of weight: "7 to 10 g".
#[must_use]
pub fn mass_range(low: Mass, high: Mass, options: FormatOptions) -> String {
    let unit = options.units.mass;
    let places = match unit {
        MassUnit::Grams => 1,
        MassUnit::Ounces => 2,
    };
    let (low, high) = (unit.number_of(low), unit.number_of(high));
    range(low, high, places, unit.symbol(), options)
}

/// A range of temperature: "24 to 26 °C".
#[must_use]
pub fn temperature_range(low: Temperature, high: Temperature, options: FormatOptions) -> String {
    let scale = options.units.temperature;
    let low = degrees(scale.number_of(low), scale, options.numbers);
    let high = degrees(scale.number_of(high), scale, options.numbers);
    let figures = if low == high {
        low
    } else {
        tr!("{low} to {high}", low = low, high = high)
    };
    with_unit(&figures, scale.symbol())
}

/// A size with a sign in front; "no change" where it rounds to zero.
fn signed(change: f64, places: usize, write: impl Fn(f64) -> String) -> String {
    match digits(change, places) {
        Some(digits) if digits.is_nought() => text(NO_CHANGE).to_owned(),
        _ if change < 0.0 => format!("{}{}", super::figure::MINUS, write(change.abs())),
        _ => format!("+{}", write(change)),
    }
}
