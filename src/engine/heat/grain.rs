//! Grains: between which temperatures the starch of each flour cooks.

use crate::engine::ingredients::Food;
use crate::engine::quantity::Temperature;
use crate::engine::working::TableReading;

/// Where a flour's starch comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Grain {
    /// Wheat and spelt.
    Wheat,
    /// Rye.
    Rye,
    /// Rice.
    Rice,
    /// Maize.
    Maize,
    /// Potato.
    Potato,
    /// Tapioca.
    Tapioca,
    /// Oat.
    Oat,
    /// Barley.
    Barley,
    /// Buckwheat.
    Buckwheat,
}

/// Where cooking begins, is half done and ends, °C, in plenty of water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CookingRange {
    /// Where the first granules swell.
    pub begins: Temperature,
    /// Where half is cooked.
    pub half: Temperature,
    /// Where the last are cooked.
    pub ends: Temperature,
}

const fn range(begins: f64, half: f64, ends: f64) -> CookingRange {
    CookingRange {
        begins: Temperature::known(begins),
        half: Temperature::known(half),
        ends: Temperature::known(ends),
    }
}

impl Grain {
    /// Every grain, in the order lists are shown.
    pub const ALL: [Self; 9] = [
        Self::Wheat,
        Self::Rye,
        Self::Rice,
        Self::Maize,
        Self::Potato,
        Self::Tapioca,
        Self::Oat,
        Self::Barley,
        Self::Buckwheat,
    ];

    /// The range its starch cooks in.
    ///
    /// Varieties differ by some degrees, and methods by as much.
    ///
    /// Source: wheat 58 to 65, Faltermaier et al., *J. Inst. Brew.* 2014, middle 62 by
    /// calorimetry; maize 62 to 72, potato 56 to 66, tapioca 58.5 to 70, Balagopalan et al.,
    /// *Cassava in Food, Feed and Industry*, 1988, p. 120; rice: middle of eleven varieties
    /// measured by calorimetry, 56 to 71 where they begin, 69 to 82 where they end; rye, oat and
    /// the middles of maize and tapioca: Lund, *Crit. Rev. Food Sci. Nutr.* 20, 1984 (from memory);
    /// barley: Lund as well (from memory); buckwheat: from memory.
    #[must_use]
    pub const fn cooks(self) -> CookingRange {
        match self {
            Self::Wheat => range(58.0, 62.0, 65.0),
            Self::Rye => range(57.0, 61.0, 70.0),
            Self::Rice => range(63.8, 68.2, 75.4),
            Self::Maize => range(62.0, 67.0, 72.0),
            Self::Potato => range(56.0, 62.0, 66.0),
            Self::Tapioca => range(58.5, 64.0, 70.0),
            Self::Oat => range(53.0, 56.0, 59.0),
            Self::Barley => range(52.0, 57.0, 60.0),
            Self::Buckwheat => range(60.0, 66.0, 73.0),
        }
    }

    /// The grain of a listed food; wheat where nothing else is known.
    #[must_use]
    pub fn of(food: &Food) -> Self {
        match food {
            Food::Listed(listed) => Self::numbered(listed.row().number),
            Food::Own(_) => Self::Wheat,
        }
    }

    /// The ingredient table keeps its flours and starches under these numbers for good.
    const fn numbered(number: u16) -> Self {
        match number {
            40..=49 => Self::Rye,
            50..=59 | 102 => Self::Rice,
            60..=64 => Self::Oat,
            65..=69 => Self::Barley,
            70..=74 => Self::Buckwheat,
            75..=79 | 101 => Self::Potato,
            100 => Self::Maize,
            103 => Self::Tapioca,
            _ => Self::Wheat,
        }
    }

    /// How much of its starch a temperature cooks, given enough water, as a fraction.
    pub(super) fn cooked_at(self, celsius: f64) -> TableReading {
        let range = self.cooks();
        TableReading::of(
            &[
                (range.begins.celsius(), 0.0),
                (range.half.celsius(), 0.5),
                (range.ends.celsius(), 1.0),
            ],
            celsius,
        )
    }
}
