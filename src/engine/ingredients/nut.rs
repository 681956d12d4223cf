//! Nuts and seeds.
//!
//! Coconut is not among the allergens European law names.

use super::table::{Sr28, Starch};
use super::{Allergen, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(1100, "Almonds", "with skin", Role::Inclusion)
        .sr28(12061, Sr28 {
            water: 4.41, protein: 21.15, fat: 49.93, saturates: 3.802, carbohydrate: 21.55,
            sugars: 4.35, fibre: 12.5, ash: 2.97, sodium_mg: 1.0, starch: Starch::Printed(0.72),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Almonds]),
    Ingredient::new(1101, "Almonds, blanched", "", Role::Inclusion)
        .sr28(12062, Sr28 {
            water: 4.51, protein: 21.4, fat: 52.52, saturates: 3.953, carbohydrate: 18.67,
            sugars: 4.63, fibre: 9.9, ash: 2.91, sodium_mg: 19.0, starch: Starch::Printed(1.0),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Almonds]),
    Ingredient::new(1102, "Hazelnuts", "", Role::Inclusion)
        .sr28(12120, Sr28 {
            water: 5.31, protein: 14.95, fat: 60.75, saturates: 4.464, carbohydrate: 16.7,
            sugars: 4.34, fibre: 9.7, ash: 2.29, starch: Starch::Printed(0.48), ..Sr28::EMPTY
        }).allergens(&[Allergen::Hazelnuts]),
    Ingredient::new(1103, "Walnuts", "", Role::Inclusion)
        .sr28(12155, Sr28 {
            water: 4.07, protein: 15.23, fat: 65.21, saturates: 6.126, carbohydrate: 13.71,
            sugars: 2.61, fibre: 6.7, ash: 1.78, sodium_mg: 2.0, starch: Starch::Printed(0.06),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Walnuts]),
    Ingredient::new(1104, "Pecans", "", Role::Inclusion)
        .sr28(12142, Sr28 {
            water: 3.52, protein: 9.17, fat: 71.97, saturates: 6.18, carbohydrate: 13.86,
            sugars: 3.97, fibre: 9.6, ash: 1.49, starch: Starch::Printed(0.46), ..Sr28::EMPTY
        }).allergens(&[Allergen::Pecans]),
    Ingredient::new(1110, "Sesame seed", "whole, dried", Role::Inclusion)
        .sr28(12023, Sr28 {
            water: 4.69, protein: 17.73, fat: 49.67, saturates: 6.957, carbohydrate: 23.45,
            sugars: 0.3, fibre: 11.8, ash: 4.45, sodium_mg: 11.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Sesame]),
    Ingredient::new(1111, "Sunflower seed", "kernels", Role::Inclusion)
        .sr28(12036, Sr28 {
            water: 4.73, protein: 20.78, fat: 51.46, saturates: 4.455, carbohydrate: 20.0,
            sugars: 2.62, fibre: 8.6, ash: 3.02, sodium_mg: 9.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1112, "Desiccated coconut", "unsweetened", Role::Inclusion)
        .sr28(12108, Sr28 {
            water: 3.0, protein: 6.88, fat: 64.53, saturates: 57.218, carbohydrate: 23.65,
            sugars: 7.35, fibre: 16.3, ash: 1.94, sodium_mg: 37.0, ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(1120, "Peanut butter", "smooth, salted", Role::Inclusion)
        .sr28(16098, Sr28 {
            water: 1.23, protein: 22.21, fat: 51.36, saturates: 10.325, carbohydrate: 22.31,
            sugars: 10.49, fibre: 5.0, ash: 2.89, sodium_mg: 426.0, starch: Starch::Printed(3.56),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Peanuts]).packet(&packet::MADE_UP),
];
