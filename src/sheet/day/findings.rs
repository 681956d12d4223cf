//! Findings: what was found in a bake that is shown in the log and teaches nothing by itself.

use crate::engine::quantity::{Mass, Share, Temperature};

/// How brown a crust is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Crust {
    /// Hardly coloured.
    Pale,
    /// Golden brown.
    Golden,
    /// Dark brown.
    Dark,
}

impl Crust {
    /// Every colour, palest first.
    pub const ALL: [Self; 3] = [Self::Pale, Self::Golden, Self::Dark];
}

/// What was found in a bake. Nothing of it need be there.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Findings {
    /// True water on flour, of the masses that were weighed.
    pub water: Option<Share>,
    /// How warm a paste was when it was measured last.
    pub paste: Option<Temperature>,
    /// What all the bread weighed out of the oven.
    pub bread: Option<Mass>,
    /// How hot the middle was at the end of the bake.
    pub core: Option<Temperature>,
    /// How brown the crust was.
    pub crust: Option<Crust>,
}

impl Findings {
    /// Nothing.
    pub const NONE: Self = Self {
        water: None,
        paste: None,
        bread: None,
        core: None,
        crust: None,
    };

    /// Whether nothing was found.
    #[must_use]
    pub fn is_none(&self) -> bool {
        *self == Self::NONE
    }
}

/// A line of which another mass was weighed than was asked.
#[derive(Clone, Debug, PartialEq)]
pub struct WeighedOtherwise {
    /// What its food is called, as the list of ingredients or the baker has it.
    pub food: String,
    /// The mass asked for.
    pub asked: Mass,
    /// The mass weighed.
    pub weighed: Mass,
}

impl WeighedOtherwise {
    /// The most characters the name of a food may have.
    pub const NAME_LENGTH: usize = 120;
}
