//! Solubility: how much sugar water takes up.

use crate::engine::quantity::{Share, Temperature};
use crate::engine::working::TableReading;

/// The table the solubility of sugar is read from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SolubilityTable {
    /// Antokolskaya 1964: grams in 100 g of water, every 5 °C.
    #[default]
    Antokolskaya,
    /// Sokolovsky 1958: per cent of the solution, every 10 °C.
    Sokolovsky,
}

/// Grams of sucrose that 100 g of water take up, against °C.
///
/// Source: Mohos, *Confectionery and Chocolate Engineering* (2010), Table A2.2.
const IN_HUNDRED_WATER: [(f64, f64); 21] = [
    (0.0, 179.2),
    (5.0, 184.7),
    (10.0, 190.5),
    (15.0, 197.0),
    (20.0, 203.9),
    (25.0, 211.4),
    (30.0, 219.9),
    (35.0, 228.4),
    (40.0, 238.1),
    (45.0, 248.7),
    (50.0, 260.4),
    (55.0, 273.1),
    (60.0, 287.3),
    (65.0, 302.9),
    (70.0, 320.5),
    (75.0, 339.9),
    (80.0, 362.1),
    (85.0, 386.8),
    (90.0, 415.7),
    (95.0, 448.6),
    (100.0, 487.2),
];

/// Sucrose in a saturated solution, per cent by mass, against °C.
///
/// Source: Mohos, *Confectionery and Chocolate Engineering* (2010), Table A2.3.
const IN_HUNDRED_SOLUTION: [(f64, f64); 11] = [
    (0.0, 64.18),
    (10.0, 65.58),
    (20.0, 67.09),
    (30.0, 68.70),
    (40.0, 70.42),
    (50.0, 72.25),
    (60.0, 74.18),
    (70.0, 76.22),
    (80.0, 78.36),
    (90.0, 80.84),
    (100.0, 82.97),
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
        let read = self.read(temperature).value;
        let fraction = match self {
            Self::Antokolskaya => read / 100.0,
            Self::Sokolovsky => read / (100.0 - read),
        };
        Share::from_fraction(fraction).unwrap_or(Share::NONE)
    }

    /// What the table says, in its own unit.
    pub(super) fn read(self, temperature: Temperature) -> TableReading {
        let celsius = temperature.celsius();
        match self {
            Self::Antokolskaya => TableReading::of(&IN_HUNDRED_WATER, celsius),
            Self::Sokolovsky => TableReading::of(&IN_HUNDRED_SOLUTION, celsius),
        }
    }
}
