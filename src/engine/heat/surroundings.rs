//! What surrounds the work: room, fridge, freezer, and how cold and hot a liquid may be.

use crate::engine::quantity::Temperature;

/// Between what the liquid can be kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LiquidRange {
    /// The coldest: ice water.
    pub coldest: Temperature,
    /// The hottest that yeast is safe with.
    pub hottest: Temperature,
}

impl Default for LiquidRange {
    /// Ice water to 40 °C: yeast bears a little more, and no baker pours hotter milk on it. Common
    /// practice.
    fn default() -> Self {
        Self {
            coldest: Temperature::known(0.0),
            hottest: Temperature::known(40.0),
        }
    }
}

/// What surrounds the work, as far as remedies need it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// The room, where cold things stand and warm up.
    pub room: Temperature,
    /// The fridge, where flour and bowl can be chilled.
    pub fridge: Temperature,
    /// The freezer, where ice comes from.
    pub freezer: Temperature,
    /// Between what the liquid can be kept.
    pub liquid: LiquidRange,
}
