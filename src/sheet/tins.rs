//! Tins: the user's own by name, and the layout of a formula in them.

use std::num::NonZeroU16;

use crate::engine::quantity::SpecificVolume;
use crate::engine::tin::{Tin, TinRise, Tins};

/// A tin of the user's, by name.
#[derive(Clone, Debug, PartialEq)]
pub struct SavedTin {
    /// As the user calls it; at most [`SavedTin::NAME_LENGTH`] characters.
    pub name: String,
    /// What it measures.
    pub tin: Tin,
}

impl SavedTin {
    /// The most characters a name may have.
    pub const NAME_LENGTH: usize = 60;
    /// The most tins that are stored.
    pub const MOST: usize = 60;
}

/// The tins of a formula, and its layout in them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TinUse {
    /// The tins.
    pub tins: Tins,
    /// Rows of pieces; none leaves it to the tin.
    pub rows: Option<NonZeroU16>,
    /// Volume of tin for a gram of dough; none leaves it to the kind of bread.
    pub room: Option<SpecificVolume>,
    /// How far the dough rises before it goes into the oven.
    pub rise: TinRise,
}

impl TinUse {
    /// One tin, laid out and filled as is usual, its dough risen as is usual.
    #[must_use]
    pub fn of(tin: Tin) -> Self {
        Self {
            tins: Tins {
                tin,
                count: NonZeroU16::MIN,
            },
            rows: None,
            room: None,
            rise: TinRise::Usual,
        }
    }
}
