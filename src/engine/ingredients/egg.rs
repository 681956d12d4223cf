//! Eggs and their parts, without shell.

use super::table::Sr28;
use super::{Allergen, Ingredient, Role};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(600, "Egg", "whole, shelled", Role::Egg)
        .sr28(1123, Sr28 {
            water: 76.15, protein: 12.56, fat: 9.51, saturates: 3.126, carbohydrate: 0.72,
            sugars: 0.37, ash: 1.06, sodium_mg: 142.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Eggs]),
    Ingredient::new(601, "Egg yolk", "", Role::Egg)
        .sr28(1125, Sr28 {
            water: 52.31, protein: 15.86, fat: 26.54, saturates: 9.551, carbohydrate: 3.59,
            sugars: 0.56, ash: 1.71, sodium_mg: 48.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Eggs]),
    Ingredient::new(602, "Egg white", "", Role::Egg)
        .sr28(1124, Sr28 {
            water: 87.57, protein: 10.9, fat: 0.17, carbohydrate: 0.73, sugars: 0.71, ash: 0.63,
            sodium_mg: 166.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Eggs]),
    Ingredient::new(603, "Whole egg powder", "", Role::Egg)
        .sr28(1133, Sr28 {
            water: 2.78, protein: 48.05, fat: 43.9, saturates: 15.069, carbohydrate: 1.13,
            sugars: 0.56, ash: 4.13, sodium_mg: 476.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Eggs]),
];
