//! Listed ingredients: the larder's own rows, found by a number that never changes.

use super::{
    Allergen, Composition, Role, Source, chocolate, dairy, egg, fat, flavour, flour, fruit, nut,
    plant_drink, salt, starch, sugar, water, yeast,
};

/// One row of the larder.
#[derive(Debug, PartialEq)]
pub struct Ingredient {
    /// The number it is kept under in records and links. Never reused, never changed.
    pub number: u16,
    /// Its name in the trade: "Bread flour".
    pub name: &'static str,
    /// What tells it from its neighbours: "white, 12 % protein"; may be empty.
    pub detail: &'static str,
    /// What it does in a dough.
    pub role: Role,
    /// What it is made of.
    pub composition: Composition,
    /// Whether the table itself gives starch; otherwise it is worked out from the rest.
    pub starch_from_table: bool,
    /// Cocoa share printed on such a packet, percent; zero for what has none.
    pub cocoa_percent: f64,
    /// What must be named.
    pub allergens: &'static [Allergen],
    /// Where the composition was read.
    pub source: Source,
}

/// Families, each sorted by number, in the order of the picker.
const FAMILIES: [&[Ingredient]; 14] = [
    flour::ROWS,
    starch::ROWS,
    water::ROWS,
    dairy::ROWS,
    plant_drink::ROWS,
    fat::ROWS,
    egg::ROWS,
    sugar::ROWS,
    salt::ROWS,
    yeast::ROWS,
    chocolate::ROWS,
    nut::ROWS,
    fruit::ROWS,
    flavour::ROWS,
];

/// No ingredient has this number, or this release is too old to know it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("no ingredient has the number {number}")]
pub struct UnknownIngredient {
    /// The number asked for.
    pub number: u16,
}

/// A row of the larder that is known to exist.
#[derive(Clone, Copy, Debug)]
pub struct Listed(&'static Ingredient);

impl Listed {
    /// The row with this number.
    ///
    /// # Errors
    /// [`UnknownIngredient`] when there is none.
    pub fn numbered(number: u16) -> Result<Self, UnknownIngredient> {
        Self::all()
            .find(|listed| listed.0.number == number)
            .ok_or(UnknownIngredient { number })
    }

    /// Every row, family by family.
    pub fn all() -> impl Iterator<Item = Self> {
        FAMILIES.iter().flat_map(|family| family.iter()).map(Self)
    }

    /// The row itself.
    #[must_use]
    pub const fn row(self) -> &'static Ingredient {
        self.0
    }
}

impl PartialEq for Listed {
    fn eq(&self, other: &Self) -> bool {
        self.0.number == other.0.number
    }
}
