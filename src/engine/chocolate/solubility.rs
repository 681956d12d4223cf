//! Solubility: how much sugar water takes up.

use crate::engine::quantity::{Share, Temperature};

/// The table the solubility of sugar is read from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SolubilityTable {
    /// Antokolskaya 1964: grams in 100 g of water, every 5 °C.
    #[default]
    Antokolskaya,
    /// Sokolovsky 1958: per cent of the solution, every 10 °C.
    Sokolovsky,
}

/// Grams of sucrose that 100 g of water take up, every 5 °C from 0 °C.
///
/// Source: Mohos, *Confectionery and Chocolate Engineering* (2010), Table A2.2.
const IN_HUNDRED_WATER: [f64; 21] = [
    179.2, 184.7, 190.5, 197.0, 203.9, 211.4, 219.9, 228.4, 238.1, 248.7, 260.4, 273.1, 287.3,
    302.9, 320.5, 339.9, 362.1, 386.8, 415.7, 448.6, 487.2,
];

/// Sucrose in a saturated solution, per cent by mass, every 10 °C from 0 °C.
///
/// Source: Mohos, *Confectionery and Chocolate Engineering* (2010), Table A2.3.
const IN_HUNDRED_SOLUTION: [f64; 11] = [
    64.18, 65.58, 67.09, 68.70, 70.42, 72.25, 74.18, 76.22, 78.36, 80.84, 82.97,
];

impl SolubilityTable {
    /// The work it is printed in.
    #[must_use]
    pub const fn source(self) -> &'static str {
        match self {
            Self::Antokolskaya => {
                "Mohos, Confectionery and Chocolate Engineering (2010), Table A2.2 (Antokolskaya 1964)"
            }
            Self::Sokolovsky => {
                "Mohos, Confectionery and Chocolate Engineering (2010), Table A2.3 (Sokolovsky 1958)"
            }
        }
    }

    /// Sucrose that water takes up, as a multiple of the water's weight.
    ///
    /// Straight lines between the rows; the first and last row beyond 0 and 100 °C. Other sugars
    /// differ: lactose dissolves less, fructose more.
    #[must_use]
    pub fn sugar_on_water(self, temperature: Temperature) -> Share {
        let read = self.read(temperature).value();
        let fraction = match self {
            Self::Antokolskaya => read / 100.0,
            Self::Sokolovsky => read / (100.0 - read),
        };
        Share::from_fraction(fraction).unwrap_or(Share::NONE)
    }

    /// The two rows that are read, in the table's own unit.
    pub(super) fn read(self, temperature: Temperature) -> Reading {
        let t = temperature.celsius().clamp(0.0, 100.0);
        match self {
            Self::Antokolskaya => Reading::of(&IN_HUNDRED_WATER, 5.0, t),
            Self::Sokolovsky => Reading::of(&IN_HUNDRED_SOLUTION, 10.0, t),
        }
    }
}

/// A value between two rows of a table.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Reading {
    /// °C asked for.
    pub(super) t: f64,
    /// °C of the lower row.
    pub(super) from: f64,
    /// °C between the rows.
    pub(super) step: f64,
    /// What the lower row says.
    pub(super) low: f64,
    /// What the upper row says.
    pub(super) high: f64,
}

impl Reading {
    /// Finds the rows about `t` in a table that starts at 0 °C and goes in even steps.
    fn of(table: &[f64], step: f64, t: f64) -> Self {
        let mut found = Self::default();
        let mut from = 0.0;
        for pair in table.windows(2) {
            if let [low, high] = *pair
                && from <= t
            {
                found = Self {
                    t,
                    from,
                    step,
                    low,
                    high,
                };
            }
            from += step;
        }
        found
    }

    /// On a straight line between the rows.
    pub(super) fn value(self) -> f64 {
        self.low + (self.high - self.low) * (self.t - self.from) / self.step
    }
}
