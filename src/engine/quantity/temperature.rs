//! Temperature, and change of temperature: two kinds of number that are never mixed up.

use std::ops::{RangeInclusive, Sub};

use super::out_of_range::{OutOfRange, within};

/// How hot something is. Held in °C, always finite, always within [`Temperature::RANGE`].
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Temperature {
    /// From a deep freezer to a hot hearth, °C.
    pub const RANGE: RangeInclusive<f64> = -40.0..=350.0;

    /// Takes degrees Celsius.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Temperature::RANGE`]; NaN is outside every range.
    pub fn from_celsius(celsius: f64) -> Result<Self, OutOfRange> {
        within(celsius, Self::RANGE).map(Self)
    }

    /// Takes degrees Celsius as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 0.0; the tables hold none.
    pub(crate) const fn known(celsius: f64) -> Self {
        if celsius >= -40.0 && celsius <= 350.0 {
            Self(celsius)
        } else {
            Self(0.0)
        }
    }

    /// Gives degrees Celsius.
    #[must_use]
    pub const fn celsius(self) -> f64 {
        self.0
    }

    /// The nearest half degree Celsius: what a kitchen thermometer can be held to. Common practice.
    ///
    /// ```
    /// use softcrumb::engine::quantity::Temperature;
    ///
    /// let exact = Temperature::from_celsius(33.9)?;
    /// assert_eq!(exact.to_half_degree(), Temperature::from_celsius(34.0)?);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn to_half_degree(self) -> Self {
        Self(libm::round(2.0 * self.0) / 2.0)
    }

    /// The next half degree Celsius, where it is to be as warm at least. Common practice.
    #[must_use]
    pub fn up_to_half_degree(self) -> Self {
        Self(libm::ceil(2.0 * self.0) / 2.0)
    }

    /// The colder of the two.
    #[must_use]
    pub const fn min_of(self, other: Self) -> Self {
        if other.0 < self.0 { other } else { self }
    }

    /// The warmer of the two.
    #[must_use]
    pub const fn max_of(self, other: Self) -> Self {
        if other.0 > self.0 { other } else { self }
    }
}

impl Sub for Temperature {
    type Output = TemperatureChange;
    fn sub(self, cooler: Self) -> TemperatureChange {
        TemperatureChange(self.0 - cooler.0)
    }
}

/// How much hotter or cooler, in kelvin.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct TemperatureChange(f64);

impl TemperatureChange {
    /// From the hottest hearth to the deepest freezer and back, K.
    pub const RANGE: RangeInclusive<f64> = -400.0..=400.0;

    /// Takes kelvin.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`TemperatureChange::RANGE`]; NaN is outside every range.
    pub fn from_kelvin(kelvin: f64) -> Result<Self, OutOfRange> {
        within(kelvin, Self::RANGE).map(Self)
    }

    /// Takes kelvin as the engine's own tables have them, at compile time.
    ///
    /// A number outside the range counts as 0.0; the tables hold none.
    pub(crate) const fn known(kelvin: f64) -> Self {
        if kelvin >= -400.0 && kelvin <= 400.0 {
            Self(kelvin)
        } else {
            Self(0.0)
        }
    }

    /// Gives kelvin.
    #[must_use]
    pub const fn kelvin(self) -> f64 {
        self.0
    }
}
