//! The unit switch: grams or ounces, Celsius or Fahrenheit, with the factors between them.

use crate::engine::quantity::{Altitude, Length, Mass, OutOfRange, Temperature, TemperatureChange};

/// Grams in one avoirdupois pound, exactly.
///
/// Source: NIST Special Publication 811 (2008), appendix B.8, "pound (avoirdupois)", footnote:
/// 0.453 592 37 kg, exact.
pub const GRAMS_IN_POUND: f64 = 453.592_37;

/// Grams in one avoirdupois ounce, exactly: a sixteenth of a pound.
pub const GRAMS_IN_OUNCE: f64 = 28.349_523_125;

/// Ounces in one pound.
pub const OUNCES_IN_POUND: f64 = 16.0;

/// Degrees Fahrenheit in one degree Celsius.
const FAHRENHEIT_IN_CELSIUS: f64 = 1.8;

/// Melting ice in degrees Fahrenheit.
const FAHRENHEIT_AT_NOUGHT: f64 = 32.0;

/// Which unit a weight is shown in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum MassUnit {
    /// Grams, and kilograms for large batches.
    #[default]
    Grams,
    /// Avoirdupois ounces and pounds.
    Ounces,
}

impl MassUnit {
    /// Both, in the order of the switch.
    pub const ALL: [Self; 2] = [Self::Grams, Self::Ounces];

    /// The symbol as printed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Grams => "g",
            Self::Ounces => "oz",
        }
    }

    /// Converts a weight to this unit.
    #[must_use]
    pub fn number_of(self, mass: Mass) -> f64 {
        mass.grams() / self.grams()
    }

    /// Grams in one of this unit.
    #[must_use]
    pub const fn grams(self) -> f64 {
        match self {
            Self::Grams => 1.0,
            Self::Ounces => GRAMS_IN_OUNCE,
        }
    }
}

/// Which scale a temperature is shown on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum TemperatureUnit {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

impl TemperatureUnit {
    /// Both, in the order of the switch.
    pub const ALL: [Self; 2] = [Self::Celsius, Self::Fahrenheit];

    /// The symbol as printed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
        }
    }

    /// Converts a temperature to this scale: `t/°F = 1.8 t/°C + 32`.
    ///
    /// Source: NIST Special Publication 811 (2008), appendix B.8, "degree Fahrenheit".
    #[must_use]
    pub fn number_of(self, temperature: Temperature) -> f64 {
        match self {
            Self::Celsius => temperature.celsius(),
            Self::Fahrenheit => {
                temperature.celsius() * FAHRENHEIT_IN_CELSIUS + FAHRENHEIT_AT_NOUGHT
            }
        }
    }

    /// Converts a change of temperature to degrees of this scale.
    #[must_use]
    pub fn degrees_of(self, change: TemperatureChange) -> f64 {
        match self {
            Self::Celsius => change.kelvin(),
            Self::Fahrenheit => change.kelvin() * FAHRENHEIT_IN_CELSIUS,
        }
    }

    /// Converts degrees of this scale to a temperature: `t/°C = (t/°F − 32) / 1.8`.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Temperature::RANGE`].
    pub fn temperature(self, number: f64) -> Result<Temperature, OutOfRange> {
        match self {
            Self::Celsius => Temperature::from_celsius(number),
            Self::Fahrenheit => {
                Temperature::from_celsius((number - FAHRENHEIT_AT_NOUGHT) / FAHRENHEIT_IN_CELSIUS)
            }
        }
    }
}

/// Metres in one inch, exactly.
///
/// Source: NIST Special Publication 811 (2008), appendix B.8, "inch".
pub const METRES_IN_INCH: f64 = 0.0254;

/// Metres in one foot, exactly: twelve inches.
pub const METRES_IN_FOOT: f64 = 0.3048;

/// Unit of a food's thickness.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ThicknessUnit {
    /// Centimetres.
    Centimetres,
    /// Inches.
    Inches,
}

impl ThicknessUnit {
    /// The one that belongs to the chosen units.
    #[must_use]
    pub const fn of(units: Units) -> Self {
        match units.mass {
            MassUnit::Grams => Self::Centimetres,
            MassUnit::Ounces => Self::Inches,
        }
    }

    /// The symbol as printed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Centimetres => "cm",
            Self::Inches => "in",
        }
    }

    /// Metres in one of this unit.
    #[must_use]
    pub const fn metres(self) -> f64 {
        match self {
            Self::Centimetres => 0.01,
            Self::Inches => METRES_IN_INCH,
        }
    }

    /// Converts a length to this unit.
    #[must_use]
    pub fn number_of(self, length: Length) -> f64 {
        length.metres() / self.metres()
    }
}

/// Unit of an altitude.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeightUnit {
    /// Metres.
    Metres,
    /// Feet.
    Feet,
}

impl HeightUnit {
    /// The one that belongs to the chosen units.
    #[must_use]
    pub const fn of(units: Units) -> Self {
        match units.mass {
            MassUnit::Grams => Self::Metres,
            MassUnit::Ounces => Self::Feet,
        }
    }

    /// The symbol as printed.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Metres => "m",
            Self::Feet => "ft",
        }
    }

    /// Metres in one of this unit.
    #[must_use]
    pub const fn metres(self) -> f64 {
        match self {
            Self::Metres => 1.0,
            Self::Feet => METRES_IN_FOOT,
        }
    }

    /// Converts an altitude to this unit.
    #[must_use]
    pub fn number_of(self, altitude: Altitude) -> f64 {
        altitude.metres() / self.metres()
    }
}

/// The units the user chose.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Units {
    /// For weights.
    pub mass: MassUnit,
    /// For temperatures.
    pub temperature: TemperatureUnit,
}

impl From<crate::sheet::UnitSystem> for Units {
    /// The units of the one switch in the settings.
    fn from(stored: crate::sheet::UnitSystem) -> Self {
        match stored {
            crate::sheet::UnitSystem::Grams => Self::default(),
            crate::sheet::UnitSystem::Ounces => Self {
                mass: MassUnit::Ounces,
                temperature: TemperatureUnit::Fahrenheit,
            },
        }
    }
}
