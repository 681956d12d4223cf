//! The kitchen: what is true of this room and its equipment.

use crate::engine::quantity::{Division, Mass};

/// The divisions of the scales in the kitchen, each one of [`Division::ALL`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scales {
    /// The division of the kitchen scale.
    pub main: Mass,
    /// The division of the pocket scale for yeast and salt, where there is one.
    pub pocket: Option<Mass>,
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
        Self {
            scales: Scales {
                main: Division::ONE_GRAM.mass(),
                pocket: None,
            },
        }
    }
}
