//! The usual volume of tin for a gram of dough, by kind of bread.

use super::shape::{Tin, TinShape};
use crate::engine::formula::Bread;
use crate::engine::quantity::SpecificVolume;

/// Volume of tin for a gram of dough, from the fullest usual tin to the emptiest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualSpecificVolume {
    /// The fullest.
    pub least: SpecificVolume,
    /// The default.
    pub taken: SpecificVolume,
    /// The emptiest.
    pub most: SpecificVolume,
    /// The work, or "common practice".
    pub source: &'static str,
}

/// The specific volume of dough before it rises, 0.85 cm³/g.
///
/// Source: a handbook of sourdough biotechnology, Table 3.4 (specific volume of dough).
pub const DOUGH_SPECIFIC_VOLUME: SpecificVolume = SpecificVolume::known(0.85);

const OPEN: &str = "Tsuji culinary school, column on tin sizes (2016): 3.8 to 3.9 in open tins; \
                    3.8 to 4.0 is usual for milk bread; common practice";
const LIDDED: &str = "common practice: 3.6 to 4.2 under a lid";
const RICH: &str = "common practice: 3.0 to 3.5 in brioche tins";
const HEAVY: &str = "common practice: 2.2 to 3.0 for rye in tins";
const CUPS: &str = "common practice: cups filled a third to a half";

impl UsualSpecificVolume {
    /// What is usual for a kind of bread in a tin.
    #[must_use]
    pub const fn of(bread: Bread, tin: &Tin) -> Self {
        match (bread, tin.shape) {
            (_, TinShape::Muffin { .. }) => Self::known(2.2, 2.8, 3.6, CUPS),
            (Bread::RichEgg, _) => Self::known(3.0, 3.3, 3.5, RICH),
            (Bread::Rye, _) => Self::known(2.2, 2.6, 3.0, HEAVY),
            (Bread::SoftTin | Bread::SweetBun | Bread::PlainTin, _) if tin.lidded => {
                Self::known(3.6, 3.9, 4.2, LIDDED)
            }
            (Bread::SoftTin | Bread::SweetBun | Bread::PlainTin, _) => {
                Self::known(3.6, 3.9, 4.2, OPEN)
            }
        }
    }

    const fn known(least: f64, taken: f64, most: f64, source: &'static str) -> Self {
        Self {
            least: SpecificVolume::known(least),
            taken: SpecificVolume::known(taken),
            most: SpecificVolume::known(most),
            source,
        }
    }
}
