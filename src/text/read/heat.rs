//! Text to the quantities of heat: times, thicknesses, heights, pressures, rates.

use super::number::number;
use super::quantity::{not_below_zero, one, one_above_zero, outside};
use super::typed::typed;
use super::unit_suffix::UnitSuffix;
use super::{Limit, Measure, ReadError};
use crate::engine::quantity::{
    Altitude, Length, Minutes, OutOfRange, Pressure, TemperatureChange, WarmingRate,
};
use crate::text::{
    format_options::FormatOptions,
    unit::{HeightUnit, TemperatureUnit, ThicknessUnit},
};

/// Reads a time that is more than nothing.
///
/// # Errors
/// As [`minutes`]; [`ReadError::TooSmall`] for less than a minute.
pub fn some_minutes(text: &str, options: FormatOptions) -> Result<Minutes, ReadError> {
    let least = Minutes::known(1.0);
    let read = minutes(text, options)?;
    if read < least {
        return Err(ReadError::TooSmall {
            least: Limit::Minutes(least),
        });
    }
    Ok(read)
}

/// Reads a time, minutes unless the text has a unit: "50", "1 h 20 min", "1,5 h".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn minutes(text: &str, options: FormatOptions) -> Result<Minutes, ReadError> {
    let mut sum = 0.0;
    let mut unit_before = f64::INFINITY;
    for piece in &not_below_zero(text)? {
        let figure = number(&piece.number, options.numbers)?;
        let in_one =
            if let UnitSuffix::Minutes(in_one) = UnitSuffix::wanted(&piece.unit, Measure::Time)? {
                in_one
            } else {
                1.0
            };
        if in_one >= unit_before {
            return Err(ReadError::TwoNumbers);
        }
        unit_before = in_one;
        sum += figure * in_one;
    }
    Minutes::from_minutes(sum).map_err(|out| outside(&out, Minutes::from_minutes, Limit::Minutes))
}

/// Reads a thickness, in centimetres or inches unless the text has a unit: "3", "25 mm".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn thickness(text: &str, options: FormatOptions) -> Result<Length, ReadError> {
    let (figure, unit) = one_above_zero(text, Measure::Length, options)?;
    let in_one = if let UnitSuffix::Metres(in_one) = unit {
        in_one
    } else {
        ThicknessUnit::of(options.units).metres()
    };
    Length::from_metres(figure * in_one)
        .map_err(|out| outside(&out, Length::from_metres, Limit::Length))
}

/// Reads a height above the sea, in metres or feet unless the text has a unit: "1250", "-300 m".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn altitude(text: &str, options: FormatOptions) -> Result<Altitude, ReadError> {
    let typed = typed(text)?;
    let sign = if typed.minus { -1.0 } else { 1.0 };
    let (figure, unit) = one(typed, Measure::Length, options)?;
    let in_one = if let UnitSuffix::Metres(in_one) = unit {
        in_one
    } else {
        HeightUnit::of(options.units).metres()
    };
    Altitude::from_metres(sign * figure * in_one)
        .map_err(|out| outside(&out, Altitude::from_metres, Limit::Altitude))
}

/// Reads a pressure, in hPa unless the text has a unit: "1013", "101.3 kPa".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn pressure(text: &str, options: FormatOptions) -> Result<Pressure, ReadError> {
    let (figure, unit) = one_above_zero(text, Measure::Pressure, options)?;
    let in_one = if let UnitSuffix::Hectopascals(in_one) = unit {
        in_one
    } else {
        1.0
    };
    Pressure::from_hectopascals(figure * in_one)
        .map_err(|out| outside(&out, Pressure::from_hectopascals, Limit::Pressure))
}

/// Reads how fast mixing warms a dough, degrees a minute: "1", "0,8".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn warming_rate(text: &str, options: FormatOptions) -> Result<WarmingRate, ReadError> {
    let kelvin = degrees(text, options)?;
    WarmingRate::from_kelvin_per_minute(kelvin)
        .map_err(|out| outside(&out, WarmingRate::from_kelvin_per_minute, Limit::Rate))
}

/// Reads how much cooler something gets: "2", "3.5 °F".
///
/// # Errors
/// [`ReadError`] when the text is no such quantity, or is outside its range.
pub fn degrees_lost(text: &str, options: FormatOptions) -> Result<TemperatureChange, ReadError> {
    let most = 60.0;
    let from = |kelvin: f64| {
        if kelvin <= most {
            TemperatureChange::from_kelvin(kelvin)
        } else {
            Err(OutOfRange {
                value: kelvin,
                range: 0.0..=most,
            })
        }
    };
    let kelvin = degrees(text, options)?;
    from(kelvin).map_err(|out| outside(&out, TemperatureChange::from_kelvin, Limit::Degrees))
}

/// Degrees of a scale, as kelvin.
fn degrees(text: &str, options: FormatOptions) -> Result<f64, ReadError> {
    let (figure, unit) = one_above_zero(text, Measure::Temperature, options)?;
    let scale = if let UnitSuffix::Degrees(scale) = unit {
        scale
    } else {
        options.units.temperature
    };
    Ok(match scale {
        TemperatureUnit::Celsius => figure,
        TemperatureUnit::Fahrenheit => figure / 1.8,
    })
}
