//! Usual rise: how far dough rises in its tin before it goes into the oven.

use super::capacity::Capacity;
use super::shape::Tin;
use super::usual::DOUGH_SPECIFIC_VOLUME;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Factor, Mass};

/// How far dough rises in its tin before it goes into the oven.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum TinRise {
    /// As is usual for the bread in this tin.
    #[default]
    Usual,
    /// So many times the volume of the dough without gas.
    Times(Factor),
}

/// The share of a tin's depth at which dough goes into the oven, one to three centimetres under the
/// rim. Common practice: 80 to 90 %; 80 to 85 % under a lid.
const OF_DEPTH: f64 = 0.85;

/// How many times the volume of dough without gas it has when it is laid in the tin: mixing and a
/// first rise leave gas in it. Common practice: 1.2 to 1.4.
pub const LAID_IN: Factor = Factor::known(1.3);

/// The rise of pieces that stand without a tin. Common practice: between double and treble.
const WITHOUT_TIN: Factor = Factor::known(2.8);

impl TinRise {
    /// What earlier releases began with; a record or link that holds it means the usual rise.
    pub const FORMER: Factor = WITHOUT_TIN;

    /// Reads the factor of a record or link.
    #[must_use]
    pub fn of_factor(factor: Factor) -> Self {
        if factor == Self::FORMER {
            Self::Usual
        } else {
            Self::Times(factor)
        }
    }

    /// The factor for a record or link. A typed 2.8 is written as the next number above it, so that
    /// it is not read as the usual rise.
    #[must_use]
    pub fn as_factor(self) -> Factor {
        match self {
            Self::Usual => Self::FORMER,
            Self::Times(factor) if factor == Self::FORMER => {
                Factor::known(Self::FORMER.number().next_up())
            }
            Self::Times(factor) => factor,
        }
    }

    /// The volume before the oven, as a multiple of that of the dough without gas.
    ///
    /// The usual one brings `dough` to 85 % of the depth of one tin. Dough has its limits, by the
    /// kind of bread: in a tin with little room it rises as far as a gram of it must and crowns
    /// earlier, in one with much room no further than it can. Without a tin it is 2.8.
    ///
    /// Source: common practice.
    #[must_use]
    pub fn factor(self, tin: &Tin, dough: Mass, bread: Bread) -> Factor {
        match self {
            Self::Times(factor) => factor,
            Self::Usual => usual(tin, dough, bread).unwrap_or(WITHOUT_TIN),
        }
    }
}

fn usual(tin: &Tin, dough: Mass, bread: Bread) -> Option<Factor> {
    let capacity = Capacity::of(tin).ok()?;
    if dough <= Mass::ZERO {
        return None;
    }
    let (least, most) = limits(bread);
    let a_gram = capacity.up_to(OF_DEPTH) / dough.grams();
    let first = DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram();
    Factor::from_number(a_gram.clamp(least, most) / first).ok()
}

/// The volume of a gram of dough that is ready for the oven, at the least and at the most, cm³/g.
/// Common practice.
const fn limits(bread: Bread) -> (f64, f64) {
    match bread {
        Bread::SoftTin | Bread::SweetBun | Bread::PlainTin => (2.5, 3.6),
        Bread::RichEgg => (2.2, 3.2),
        Bread::Rye => (1.6, 2.5),
    }
}
