//! Salt and raising powders.
//!
//! Raising powders are weighed like spices and are no part of the salt percentage.

use super::table::{Ciqual, Sr28, Starch};
use super::{Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(800, "Salt", "table", Role::Salt)
        .sr28(2047, Sr28 {
            water: 0.2, ash: 99.8, sodium_mg: 38758.0, ..Sr28::EMPTY
        }),
    Ingredient::new(801, "Salt, iodised", "sea or rock", Role::Salt)
        .ciqual(11058, Ciqual {
            water: 0.027, ash: 99.9, sodium_mg: 39100.0, ..Ciqual::EMPTY
        }),
    Ingredient::new(810, "Bicarbonate of soda", "", Role::Inclusion)
        .sr28(18372, Sr28 {
            water: 0.2, ash: 36.9, sodium_mg: 27360.0, ..Sr28::EMPTY
        }),
    Ingredient::new(811, "Baking powder", "double-acting, with starch", Role::Inclusion)
        .sr28(18369, Sr28 {
            water: 5.0, carbohydrate: 27.7, fibre: 0.2, ash: 67.3, sodium_mg: 10600.0,
            starch: Starch::Remainder, ..Sr28::EMPTY
        }).packet(&packet::WITH_STARCH),
];
