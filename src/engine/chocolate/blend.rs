//! Blend: several foods poured together, as grams of each part.

use crate::engine::ingredients::Composition;
use crate::engine::quantity::{Mass, Share};

/// A food with its mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portioned {
    /// What it is made of.
    pub composition: Composition,
    /// How much of it there is.
    pub mass: Mass,
}

/// Some chocolate with what its packet says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChocolatePart {
    /// What it is made of.
    pub composition: Composition,
    /// How much of it there is.
    pub mass: Mass,
    /// Cocoa as printed on the packet, where it is.
    pub cocoa: Option<Share>,
}

/// Grams of each part. Carbohydrate is split so that no gram is counted twice.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Blend {
    pub(super) total: f64,
    pub(super) water: f64,
    pub(super) alcohol: f64,
    pub(super) sugars: f64,
    pub(super) fat: f64,
    pub(super) protein: f64,
    pub(super) fibre: f64,
    /// Carbohydrate that is neither sugar nor fibre; none where a table gives more sugars than
    /// carbohydrate.
    pub(super) other_carbohydrate: f64,
    pub(super) ash: f64,
    pub(super) sodium: f64,
}

impl Blend {
    /// All of the foods together.
    pub(super) fn of(foods: &[Portioned]) -> Self {
        foods.iter().fold(Self::default(), |sum, food| {
            sum.plus(1.0, &Self::one(*food))
        })
    }

    fn one(food: Portioned) -> Self {
        let (m, c) = (food.mass.grams(), food.composition);
        let other = c.carbohydrate.less(c.sugars).less(c.fibre);
        Self {
            total: m,
            water: m * c.water.fraction(),
            alcohol: m * c.alcohol.fraction(),
            sugars: m * c.sugars.fraction(),
            fat: m * c.fat.fraction(),
            protein: m * c.protein.fraction(),
            fibre: m * c.fibre.fraction(),
            other_carbohydrate: m * other.fraction(),
            ash: m * c.ash.fraction(),
            sodium: m * c.sodium.fraction(),
        }
    }

    /// A gram of plain water.
    pub(super) fn one_gram_of_water() -> Self {
        Self {
            total: 1.0,
            water: 1.0,
            ..Self::default()
        }
    }

    /// This with so many times another added.
    pub(super) fn plus(&self, times: f64, other: &Self) -> Self {
        Self {
            total: self.total + times * other.total,
            water: self.water + times * other.water,
            alcohol: self.alcohol + times * other.alcohol,
            sugars: self.sugars + times * other.sugars,
            fat: self.fat + times * other.fat,
            protein: self.protein + times * other.protein,
            fibre: self.fibre + times * other.fibre,
            other_carbohydrate: self.other_carbohydrate + times * other.other_carbohydrate,
            ash: self.ash + times * other.ash,
            sodium: self.sodium + times * other.sodium,
        }
    }
}
