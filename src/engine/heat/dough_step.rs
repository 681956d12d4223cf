//! Steps that bring a dough nearer to its temperature.

use crate::engine::quantity::{Mass, Minutes, Temperature};

/// One thing that could be done.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DoughStep {
    /// Warm milk and water beforehand.
    WarmLiquid {
        /// To what.
        to: Temperature,
    },
    /// Pour milk and water colder.
    ChillLiquid {
        /// How cold.
        to: Temperature,
    },
    /// Let the cold pastes and preferments stand in the room first.
    StandOut {
        /// How long in all, with what they have stood already.
        minutes: Minutes,
    },
    /// Mix longer.
    MixLonger {
        /// How much longer.
        minutes: Minutes,
    },
    /// Mix shorter.
    MixShorter {
        /// How much shorter.
        minutes: Minutes,
    },
    /// Warm the bowl beforehand.
    WarmBowl {
        /// To what.
        to: Temperature,
    },
    /// Warm the flour beforehand.
    WarmFlour {
        /// To what.
        to: Temperature,
    },
    /// Put ice in for some of the water.
    Ice {
        /// How much.
        ice: Mass,
    },
    /// Chill the flour beforehand.
    ChillFlour {
        /// To what.
        to: Temperature,
    },
    /// Chill the bowl beforehand.
    ChillBowl {
        /// To what.
        to: Temperature,
    },
}
