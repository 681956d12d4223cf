//! A composition as a table prints it: in whole numbers, which weigh less than numbers with a point.

use super::Composition;
use crate::engine::quantity::Share;

/// Thousandths of a gram in a hundred grams: no table prints finer.
const FINE: f64 = 1000.0;
/// Of sodium, which is printed in milligrams, hundred-thousandths.
const FINEST: f64 = 100_000.0;

/// What is in a hundred grams of a food, in thousandths of a gram; of sodium in hundred-thousandths.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Printed {
    water: u32,
    protein: u32,
    fat: u32,
    saturates: u32,
    carbohydrate: u32,
    sugars: u32,
    starch: u32,
    fibre: u32,
    ash: u32,
    sodium: u32,
    alcohol: u32,
}

impl Printed {
    /// As it is kept.
    pub(super) const fn of(food: Composition) -> Self {
        Self {
            water: whole(food.water, FINE),
            protein: whole(food.protein, FINE),
            fat: whole(food.fat, FINE),
            saturates: whole(food.saturates, FINE),
            carbohydrate: whole(food.carbohydrate, FINE),
            sugars: whole(food.sugars, FINE),
            starch: whole(food.starch, FINE),
            fibre: whole(food.fibre, FINE),
            ash: whole(food.ash, FINE),
            sodium: whole(food.sodium, FINEST),
            alcohol: whole(food.alcohol, FINE),
        }
    }

    /// As it is worked with.
    pub(super) const fn composition(self) -> Composition {
        Composition {
            water: share(self.water, FINE),
            protein: share(self.protein, FINE),
            fat: share(self.fat, FINE),
            saturates: share(self.saturates, FINE),
            carbohydrate: share(self.carbohydrate, FINE),
            sugars: share(self.sugars, FINE),
            starch: share(self.starch, FINE),
            fibre: share(self.fibre, FINE),
            ash: share(self.ash, FINE),
            sodium: share(self.sodium, FINEST),
            alcohol: share(self.alcohol, FINE),
        }
    }
}

#[allow(
    clippy::as_conversions,
    reason = "a part of a hundred grams is from 0 to 100, and ten million fit"
)]
const fn whole(share: Share, fine: f64) -> u32 {
    (share.fraction() * 100.0 * fine + 0.5) as u32
}

#[allow(
    clippy::as_conversions,
    reason = "every u32 is an f64; `From` is not const"
)]
const fn share(whole: u32, fine: f64) -> Share {
    Share::in_hundred(whole as f64 / fine)
}
