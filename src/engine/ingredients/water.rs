//! Water, liquid or frozen.

use super::table::{Ciqual, Sr28, Starch};
use super::{Ingredient, Role};

/// The number of ice.
pub(super) const ICE: u16 = 201;

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(200, "Water", "tap", Role::Water)
        .ciqual(18066, Ciqual {
            water: 100.0, ash: 0.1, sodium_mg: 2.4, starch: Starch::Printed(0.0), ..Ciqual::EMPTY
        }),
    Ingredient::new(ICE, "Ice", "of tap water", Role::Water)
        .ciqual(18066, Ciqual {
            water: 100.0, ash: 0.1, sodium_mg: 2.4, starch: Starch::Printed(0.0), ..Ciqual::EMPTY
        }),
    Ingredient::new(202, "Bottled water", "", Role::Water)
        .sr28(14555, Sr28 {
            water: 99.98, ash: 0.07, sodium_mg: 2.0, ..Sr28::EMPTY
        }),
];
