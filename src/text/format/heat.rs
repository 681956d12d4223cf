//! Formatting the quantities of heat: times, thicknesses, heights, pressures, rates, heat.

use super::figure::{MINUS, plain, significant};
use super::quantity::with_unit;
use crate::engine::quantity::{
    Altitude, Heat, Length, Minutes, Pressure, Temperature, TemperatureChange, WarmingRate,
};
use crate::text::{
    format_options::FormatOptions,
    tr,
    unit::{HeightUnit, TemperatureUnit, ThicknessUnit},
};

/// From here on minutes are written in hours.
const HOURS_FROM: f64 = 60.0;

/// A time: "50 min", "1 h 52 min", "6 h".
#[must_use]
pub fn minutes(time: Minutes, options: FormatOptions) -> String {
    let whole = libm::round(time.minutes());
    if whole < HOURS_FROM {
        let places = usize::from(time.minutes() < 10.0);
        return with_unit(&plain(time.minutes(), places, options.numbers), tr!("min"));
    }
    let hours = libm::floor(whole / 60.0);
    let over = whole - hours * 60.0;
    let hours = plain(hours, 0, options.numbers);
    let time = if over > 0.0 {
        tr!(
            "{hours} h {minutes} min",
            hours = hours,
            minutes = plain(over, 0, options.numbers)
        )
    } else {
        tr!("{hours} h", hours = hours)
    };
    // A time stays on one line.
    time.replace(' ', "\u{A0}")
}

/// A time as a baker can keep it: to the minute below ten, to five minutes below an hour, to
/// ten above, to half an hour in a night.
#[must_use]
pub fn about_minutes(time: Minutes, options: FormatOptions) -> String {
    minutes(about(time), options)
}

/// A range of times as a baker can keep it: "1 h 10 min to 1 h 50 min".
#[must_use]
pub fn about_range(low: Minutes, high: Minutes, options: FormatOptions) -> String {
    minutes_range(about(low), about(high), options)
}

/// From here on a time is that of a night in the fridge, min.
const NIGHT: f64 = 360.0;

/// The next time that a baker can keep; of a night the nearest half hour.
fn about(time: Minutes) -> Minutes {
    let exact = time.minutes();
    if exact >= NIGHT {
        return Minutes::from_minutes(libm::round(exact / 30.0) * 30.0).unwrap_or(time);
    }
    let step = match exact {
        small if small < 10.0 => 1.0,
        middle if middle < 60.0 => 5.0,
        _ => 10.0,
    };
    Minutes::from_minutes(libm::ceil(exact / step) * step).unwrap_or(time)
}

/// A range of minutes: "22 to 31 min", "50 min to 1 h 20 min".
#[must_use]
pub fn minutes_range(low: Minutes, high: Minutes, options: FormatOptions) -> String {
    if libm::round(high.minutes()) < HOURS_FROM {
        return super::range(low.minutes(), high.minutes(), 0, tr!("min"), options);
    }
    let (low, high) = (minutes(low, options), minutes(high, options));
    if low == high {
        low
    } else {
        tr!("{low} to {high}", low = low, high = high)
    }
}

/// A time as a plan has it, whole minutes and never none: "6 min", "1 h 12 min".
#[must_use]
pub fn whole_minutes(time: Minutes, options: FormatOptions) -> String {
    let whole = libm::round(time.minutes()).max(1.0);
    minutes(Minutes::from_minutes(whole).unwrap_or(time), options)
}

/// A thickness: "3 cm", "1.2 in".
#[must_use]
pub fn thickness(length: Length, options: FormatOptions) -> String {
    let unit = ThicknessUnit::of(options.units);
    with_unit(
        &significant(unit.number_of(length), 2, options.numbers),
        unit.symbol(),
    )
}

/// A height above the sea: "1250 m".
#[must_use]
pub fn altitude(altitude: Altitude, options: FormatOptions) -> String {
    let unit = HeightUnit::of(options.units);
    with_unit(
        &plain(unit.number_of(altitude), 0, options.numbers),
        unit.symbol(),
    )
}

/// A pressure: "1013 hPa".
#[must_use]
pub fn pressure(pressure: Pressure, options: FormatOptions) -> String {
    with_unit(&plain(pressure.hectopascals(), 0, options.numbers), "hPa")
}

/// How fast something warms: "1 °C/min".
#[must_use]
pub fn warming_rate(rate: WarmingRate, options: FormatOptions) -> String {
    let unit = options.units.temperature;
    let number = plain(degrees_per_minute(rate, unit), 2, options.numbers);
    with_unit(&number, rate_symbol(unit))
}

/// Heat with its sign: "−15.1 kJ", "+0.4 kJ".
#[must_use]
pub fn heat(heat: Heat, options: FormatOptions) -> String {
    let kilojoules = heat.joules() / 1000.0;
    let size = with_unit(&plain(kilojoules.abs(), 1, options.numbers), "kJ");
    match size.as_str() {
        "0\u{A0}kJ" => size,
        _ if kilojoules < 0.0 => format!("{MINUS}{size}"),
        _ => format!("+{size}"),
    }
}

/// A change of temperature without a sign: "2 °C".
#[must_use]
pub fn degrees_off(change: TemperatureChange, options: FormatOptions) -> String {
    let unit = options.units.temperature;
    let number = plain(unit.degrees_of(change).abs(), 1, options.numbers);
    with_unit(&number, unit.symbol())
}

/// A predicted temperature as a thermometer in a dough can tell it: "23.5 °C", "74 °F".
#[must_use]
pub fn near_temperature(temperature: Temperature, options: FormatOptions) -> String {
    let unit = options.units.temperature;
    let degrees = unit.number_of(temperature);
    let (steps, places) = match unit {
        TemperatureUnit::Celsius => (2.0, 1),
        TemperatureUnit::Fahrenheit => (1.0, 0),
    };
    let near = libm::round(degrees * steps) / steps;
    with_unit(&plain(near, places, options.numbers), unit.symbol())
}

/// A predicted temperature with its range: "about 23.5 °C (21 to 26)".
#[must_use]
pub fn about_temperature(
    likely: Temperature,
    (low, high): (Temperature, Temperature),
    options: FormatOptions,
) -> String {
    let unit = options.units.temperature;
    let whole = |end| plain(unit.number_of(end), 0, options.numbers);
    tr!(
        "about {likely} ({low} to {high})",
        likely = near_temperature(likely, options),
        low = whole(low),
        high = whole(high)
    )
}

/// Minutes for a box: "50"; a mixer's with a tenth, whole ones from an hour on.
#[must_use]
pub fn box_minutes(time: Minutes, options: FormatOptions) -> String {
    let places = usize::from(time.minutes() < HOURS_FROM);
    super::boxed::boxed(time.minutes(), places, options)
}

/// A thickness for a box: "3".
#[must_use]
pub fn box_thickness(length: Length, options: FormatOptions) -> String {
    super::boxed::boxed(
        ThicknessUnit::of(options.units).number_of(length),
        2,
        options,
    )
}

/// A height for a box: "1250".
#[must_use]
pub fn box_altitude(altitude: Altitude, options: FormatOptions) -> String {
    super::boxed::boxed(
        HeightUnit::of(options.units).number_of(altitude),
        0,
        options,
    )
}

/// A pressure for a box: "1013".
#[must_use]
pub fn box_pressure(pressure: Pressure, options: FormatOptions) -> String {
    super::boxed::boxed(pressure.hectopascals(), 1, options)
}

/// A warming rate for a box: "1".
#[must_use]
pub fn box_warming_rate(rate: WarmingRate, options: FormatOptions) -> String {
    super::boxed::boxed(
        degrees_per_minute(rate, options.units.temperature),
        2,
        options,
    )
}

/// A change of temperature for a box: "2".
#[must_use]
pub fn box_degrees(change: TemperatureChange, options: FormatOptions) -> String {
    super::boxed::boxed(options.units.temperature.degrees_of(change), 1, options)
}

/// The unit of a warming rate.
#[must_use]
pub const fn rate_symbol(unit: TemperatureUnit) -> &'static str {
    match unit {
        TemperatureUnit::Celsius => "°C/min",
        TemperatureUnit::Fahrenheit => "°F/min",
    }
}

fn degrees_per_minute(rate: WarmingRate, unit: TemperatureUnit) -> f64 {
    let change = TemperatureChange::from_kelvin(rate.kelvin_per_minute());
    change.map_or(0.0, |change| unit.degrees_of(change))
}
