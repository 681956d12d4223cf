//! The kitchen: what is true of this room and its equipment.

use std::ops::RangeInclusive;

use crate::engine::quantity::{Mass, OutOfRange};

/// The divisions of the scales in the kitchen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scales {
    /// The division of the kitchen scale.
    pub main: Mass,
    /// The division of the pocket scale for yeast and salt, where there is one.
    pub pocket: Option<Mass>,
}

impl Scales {
    /// Divisions that scales are made with, g.
    pub const DIVISION: RangeInclusive<f64> = 0.001..=100.0;

    /// A division in grams.
    ///
    /// # Errors
    /// [`OutOfRange`] outside [`Scales::DIVISION`].
    pub fn division(grams: f64) -> Result<Mass, OutOfRange> {
        if Self::DIVISION.contains(&grams) {
            Mass::from_grams(grams)
        } else {
            Err(OutOfRange {
                value: grams,
                range: Self::DIVISION,
            })
        }
    }
}

/// What is true of this room and its equipment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kitchen {
    /// The scales.
    pub scales: Scales,
}

impl Default for Kitchen {
    /// One kitchen scale that reads whole grams.
    fn default() -> Self {
        let main = Mass::from_grams(1.0).unwrap_or_default();
        Self {
            scales: Scales { main, pocket: None },
        }
    }
}
