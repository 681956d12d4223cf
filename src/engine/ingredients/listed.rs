//! Listed ingredients: the larder's own rows, found by a number that never changes.

use super::{
    Ingredient, chocolate, dairy, egg, fat, flavour, flour, fruit, nut, plant_drink, salt, starch,
    sugar, water, yeast,
};

/// Families in the order of the picker, which is the order of their numbers: each family has a
/// hundred of its own, its rows sorted, with gaps left for more.
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

/// The lowest number of a family.
const fn first_number(family: &[Ingredient]) -> u16 {
    match family.first() {
        Some(row) => row.number,
        None => u16::MAX,
    }
}

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
    /// The row with this number, found by halving: first among the families, then in its family.
    ///
    /// # Errors
    /// [`UnknownIngredient`] when there is none.
    pub fn numbered(number: u16) -> Result<Self, UnknownIngredient> {
        let begun = FAMILIES.partition_point(|family| first_number(family) <= number);
        let family = FAMILIES.get(begun.saturating_sub(1));
        let row = family.and_then(|rows| {
            let at = rows.binary_search_by_key(&number, |row| row.number).ok()?;
            rows.get(at)
        });
        row.map(Self).ok_or(UnknownIngredient { number })
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
