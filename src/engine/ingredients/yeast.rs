//! Yeasts.
//!
//! Neither table has instant yeast. It is the same dried cell as active dry yeast, so that row's
//! figures stand in, and its detail says so. Yeast's own carbohydrate is no starch.

use super::table::Sr28;
use super::{Ingredient, Role};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(900, "Fresh yeast", "compressed", Role::Yeast)
        .sr28(18374, Sr28 {
            water: 69.0, protein: 8.4, fat: 1.9, saturates: 0.243, carbohydrate: 18.1, fibre: 8.1,
            ash: 1.8, sodium_mg: 30.0, ..Sr28::EMPTY
        }),
    Ingredient::new(901, "Active dry yeast", "", Role::Yeast)
        .sr28(18375, Sr28 {
            water: 5.08, protein: 40.44, fat: 7.61, saturates: 1.001, carbohydrate: 41.22,
            fibre: 26.9, ash: 5.65, sodium_mg: 51.0, ..Sr28::EMPTY
        }),
    Ingredient::new(902, "Instant yeast", "figures of active dry yeast", Role::Yeast)
        .sr28(18375, Sr28 {
            water: 5.08, protein: 40.44, fat: 7.61, saturates: 1.001, carbohydrate: 41.22,
            fibre: 26.9, ash: 5.65, sodium_mg: 51.0, ..Sr28::EMPTY
        }),
];
