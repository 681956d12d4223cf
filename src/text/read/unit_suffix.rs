//! The unit after a number: what it measures, and how much one of it is.

use super::{Measure, ReadError};
use crate::text::unit::{
    GRAMS_IN_OUNCE, GRAMS_IN_POUND, METRES_IN_FOOT, METRES_IN_INCH, TemperatureUnit,
};

/// A unit that was recognised.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum UnitSuffix {
    /// Nothing typed: the unit of this device is meant.
    Plain,
    /// A weight; so many grams in one.
    Grams(f64),
    /// Percent.
    Percent,
    /// A degree on one of the scales.
    Degrees(TemperatureUnit),
    /// A degree, without its scale.
    SomeDegrees,
    /// Times over.
    Times,
    /// Pieces, tins, students.
    Things,
    /// A thickness; so many pascal seconds in one.
    PascalSeconds(f64),
    /// A volume: no weight can be had from it.
    Volume,
    /// A time; so many minutes in one.
    Minutes(f64),
    /// A length; so many metres in one.
    Metres(f64),
    /// A pressure; so many hPa in one.
    Hectopascals(f64),
}

impl UnitSuffix {
    /// Recognises a unit in small letters without blanks or points.
    pub(super) fn recognise(word: &str) -> Option<Self> {
        Some(match word {
            "" => Self::Plain,
            "g" | "gr" | "gm" | "gms" | "gram" | "grams" | "gramme" | "grammes" => Self::Grams(1.0),
            "kg" | "kgs" | "kilo" | "kilos" | "kilogram" | "kilograms" => Self::Grams(1000.0),
            "mg" => Self::Grams(0.001),
            "oz" | "ounce" | "ounces" => Self::Grams(GRAMS_IN_OUNCE),
            "lb" | "lbs" | "pound" | "pounds" => Self::Grams(GRAMS_IN_POUND),
            "%" | "percent" | "pct" => Self::Percent,
            "°" | "deg" | "degree" | "degrees" => Self::SomeDegrees,
            "c" | "°c" | "℃" | "degc" | "celsius" | "degreesc" | "degreescelsius" => {
                Self::Degrees(TemperatureUnit::Celsius)
            }
            "f" | "°f" | "℉" | "degf" | "fahrenheit" | "degreesf" | "degreesfahrenheit" => {
                Self::Degrees(TemperatureUnit::Fahrenheit)
            }
            "x" | "×" | "*" | "times" => Self::Times,
            "pc" | "pcs" | "piece" | "pieces" | "bun" | "buns" | "roll" | "rolls" | "loaf"
            | "loaves" | "tin" | "tins" | "student" | "students" | "people" => Self::Things,
            "pas" | "pa·s" | "pa⋅s" | "pa*s" => Self::PascalSeconds(1.0),
            "mpas" | "mpa·s" | "mpa⋅s" | "mpa*s" | "cp" => Self::PascalSeconds(0.001),
            "ml" | "l" | "cl" | "dl" | "litre" | "litres" | "liter" | "liters" | "cup" | "cups"
            | "tsp" | "tbsp" | "spoon" | "spoons" | "teaspoon" | "teaspoons" | "tablespoon"
            | "tablespoons" | "floz" | "pint" | "pints" => Self::Volume,
            "s" | "sec" | "secs" => Self::Minutes(1.0 / 60.0),
            "min" | "mins" | "minute" | "minutes" => Self::Minutes(1.0),
            "h" | "hr" | "hrs" | "hour" | "hours" => Self::Minutes(60.0),
            "mm" => Self::Metres(0.001),
            "cm" => Self::Metres(0.01),
            "m" | "metre" | "metres" | "meter" | "meters" => Self::Metres(1.0),
            "in" | "inch" | "inches" => Self::Metres(METRES_IN_INCH),
            "ft" | "foot" | "feet" => Self::Metres(METRES_IN_FOOT),
            "hpa" | "mbar" => Self::Hectopascals(1.0),
            "kpa" => Self::Hectopascals(10.0),
            _ => return None,
        })
    }

    /// What it measures; `None` where no unit was typed.
    pub(super) const fn measure(self) -> Option<Measure> {
        match self {
            Self::Plain => None,
            Self::Grams(_) => Some(Measure::Mass),
            Self::Percent => Some(Measure::Share),
            Self::Degrees(_) | Self::SomeDegrees => Some(Measure::Temperature),
            Self::Times => Some(Measure::Times),
            Self::Things => Some(Measure::Count),
            Self::PascalSeconds(_) => Some(Measure::Thickness),
            Self::Volume => Some(Measure::Volume),
            Self::Minutes(_) => Some(Measure::Time),
            Self::Metres(_) => Some(Measure::Length),
            Self::Hectopascals(_) => Some(Measure::Pressure),
        }
    }

    /// Recognises a unit that measures what is wanted.
    ///
    /// # Errors
    /// [`ReadError::UnknownUnit`] or [`ReadError::OtherUnit`].
    pub(super) fn wanted(word: &str, wanted: Measure) -> Result<Self, ReadError> {
        let unit = Self::recognise(word).ok_or(ReadError::UnknownUnit { wanted })?;
        match unit.measure() {
            Some(got) if got != wanted => Err(ReadError::OtherUnit { wanted, got }),
            _ => Ok(unit),
        }
    }
}
