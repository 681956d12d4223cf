//! How cooling goes in one kitchen, as its own weighings and thermometer readings have it.

use crate::engine::quantity::{Factor, Mass, Share, SurfaceCoefficient};

/// Which end of what is uncertain is followed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Pace {
    /// Nothing over it unless there is a lid, no skin; a fridge with moving air.
    Quick,
    /// A skin unless there is a lid; a usual fridge.
    Middle,
    /// Covered, still air in the fridge, and the fridge 1 K warmer than it is set.
    Slow,
}

/// A factor on something printed, and what it leaves open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KitchenFactor {
    /// The factor.
    pub likely: Factor,
    /// The next one lies within so much of it, over or under, nine times in ten.
    pub spread: Share,
}

/// How cooling goes in one kitchen, against the printed figures; `None` where nothing was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CoolingFactors {
    /// On the water that evaporates while a paste is stirred and cools.
    pub steam: Option<KitchenFactor>,
    /// On the heat that passes to the air of room and fridge.
    pub transfer: Option<KitchenFactor>,
}

impl KitchenFactor {
    /// The factor at one end of what it leaves open.
    #[must_use]
    pub fn at(&self, pace: Pace) -> Factor {
        let wide = 1.0 + self.spread.fraction();
        let likely = self.likely.number();
        let number = match pace {
            Pace::Quick => likely * wide,
            Pace::Middle => likely,
            Pace::Slow => likely / wide,
        };
        Factor::from_number(number).unwrap_or(self.likely)
    }
}

impl CoolingFactors {
    /// What the printed figures leave open of the steam, over or under: stirring takes half as long
    /// or three times as long, an open surface gives off twice what a skin does. Common practice.
    pub const STEAM_SPREAD: Share = Share::in_hundred(100.0);
    /// What they leave open of the heat that passes to still air: the printed coefficients of a
    /// fridge are half as much again at the quick end, and as much less at the slow one.
    pub const TRANSFER_SPREAD: Share = Share::in_hundred(50.0);

    /// A coefficient in still air, in this kitchen at one end of what is open.
    ///
    /// `h = h₀·f·(1 + s)^±1`, where a half stands for `s` as long as nothing was measured.
    #[must_use]
    pub fn still_air(&self, printed: SurfaceCoefficient, pace: Pace) -> SurfaceCoefficient {
        let factor = self.transfer.unwrap_or(KitchenFactor {
            likely: Factor::ONE,
            spread: Self::TRANSFER_SPREAD,
        });
        times(printed, factor.at(pace))
    }

    /// A coefficient in still air where only what was measured counts.
    #[must_use]
    pub fn likely_air(&self, printed: SurfaceCoefficient) -> SurfaceCoefficient {
        let factor = self.transfer.map(|factor| factor.likely);
        factor.map_or(printed, |factor| times(printed, factor))
    }

    /// How much steam leaves at the least, likely and at the most, where so much is expected with
    /// the factor in it; `None` where nothing was measured.
    #[must_use]
    pub fn steam_range(&self, likely: Mass) -> Option<[Mass; 3]> {
        let wide = 1.0 + self.steam?.spread.fraction();
        let least = Mass::from_grams(likely.grams() / wide).ok()?;
        let most = Mass::from_grams(likely.grams() * wide).ok()?;
        Some([least, likely, most])
    }
}

fn times(printed: SurfaceCoefficient, factor: Factor) -> SurfaceCoefficient {
    let watts = printed.watts_per_square_metre_kelvin() * factor.number();
    SurfaceCoefficient::from_watts_per_square_metre_kelvin(watts).unwrap_or(printed)
}
