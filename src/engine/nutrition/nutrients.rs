//! Nutrients: what labels ask for, by weight.

use crate::engine::ingredients::Composition;
use crate::engine::quantity::{Mass, Share};

/// One thing a label asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Nutrient {
    /// Fat.
    Fat,
    /// Saturates, inside fat.
    Saturates,
    /// Carbohydrate without fibre, as Europe counts it.
    Carbohydrate,
    /// Carbohydrate with fibre, as the US counts it.
    TotalCarbohydrate,
    /// Sugars, inside carbohydrate.
    Sugars,
    /// Fibre.
    Fibre,
    /// Protein.
    Protein,
    /// Salt: sodium times 2.5.
    Salt,
    /// Sodium.
    Sodium,
}

/// The nutrients of a portion of food.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Nutrients {
    /// Fat.
    pub fat: Mass,
    /// Saturates.
    pub saturates: Mass,
    /// Carbohydrate without fibre.
    pub carbohydrate: Mass,
    /// Sugars.
    pub sugars: Mass,
    /// Fibre.
    pub fibre: Mass,
    /// Protein, by the factor of its table for nitrogen.
    pub protein: Mass,
    /// Sodium.
    pub sodium: Mass,
    /// Alcohol, from flavourings; what yeast makes bakes out and is left out.
    pub alcohol: Mass,
}

/// Salt for a gram of sodium.
///
/// Source: Regulation (EU) No 1169/2011, annex I.
pub(super) const SALT_OF_SODIUM: f64 = 2.5;

impl Nutrients {
    /// The nutrients of a mass of food.
    #[must_use]
    pub fn of(mass: Mass, made_of: &Composition) -> Self {
        Self {
            fat: mass.component(made_of.fat),
            saturates: mass.component(made_of.saturates),
            carbohydrate: mass.component(made_of.carbohydrate.less(made_of.fibre)),
            sugars: mass.component(made_of.sugars),
            fibre: mass.component(made_of.fibre),
            protein: mass.component(made_of.protein),
            sodium: mass.component(made_of.sodium),
            alcohol: mass.component(made_of.alcohol),
        }
    }

    /// The mass of one nutrient.
    #[must_use]
    pub fn of_one(&self, nutrient: Nutrient) -> Mass {
        match nutrient {
            Nutrient::Fat => self.fat,
            Nutrient::Saturates => self.saturates,
            Nutrient::Carbohydrate => self.carbohydrate,
            Nutrient::TotalCarbohydrate => self.carbohydrate + self.fibre,
            Nutrient::Sugars => self.sugars,
            Nutrient::Fibre => self.fibre,
            Nutrient::Protein => self.protein,
            Nutrient::Salt => {
                Mass::from_grams(self.sodium.grams() * SALT_OF_SODIUM).unwrap_or(self.sodium)
            }
            Nutrient::Sodium => self.sodium,
        }
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        self.with(other, |one, another| one + another)
    }

    /// A share of each.
    #[must_use]
    pub fn component(self, share: Share) -> Self {
        self.with(self, |one, _| one.component(share))
    }

    fn with(self, other: Self, of: impl Fn(Mass, Mass) -> Mass) -> Self {
        Self {
            fat: of(self.fat, other.fat),
            saturates: of(self.saturates, other.saturates),
            carbohydrate: of(self.carbohydrate, other.carbohydrate),
            sugars: of(self.sugars, other.sugars),
            fibre: of(self.fibre, other.fibre),
            protein: of(self.protein, other.protein),
            sodium: of(self.sodium, other.sodium),
            alcohol: of(self.alcohol, other.alcohol),
        }
    }
}
