//! Flours and cereals, whole, cracked or ground.
//!
//! Ground cereals count as flour. What is added to flour in small amounts, or soaked and worked
//! in whole (gluten, germ, malt, rolled oats), does not, unless the baker says so.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Constituent, Ingredient, Role};

#[allow(clippy::approx_constant, reason = "3.14 g of ash in potato flour is no π")]
#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(1, "Strong white bread flour", "wheat, 12 % protein", Role::Flour)
        .sr28(20083, Sr28 {
            water: 13.36, protein: 11.98, fat: 1.66, saturates: 0.244, carbohydrate: 72.53,
            sugars: 0.31, fibre: 2.4, ash: 0.47, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(2, "Plain white flour", "wheat, 10 % protein", Role::Flour)
        .sr28(20481, Sr28 {
            water: 11.92, protein: 10.33, fat: 0.98, saturates: 0.155, carbohydrate: 76.31,
            sugars: 0.27, fibre: 2.7, ash: 0.47, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(3, "Cake flour", "wheat, 8 % protein", Role::Flour)
        .sr28(20084, Sr28 {
            water: 12.51, protein: 8.2, fat: 0.86, saturates: 0.127, carbohydrate: 78.03,
            sugars: 0.31, fibre: 1.7, ash: 0.39, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(4, "Wholemeal flour", "wheat, 13 % protein", Role::Flour)
        .sr28(20080, Sr28 {
            water: 10.74, protein: 13.21, fat: 2.5, saturates: 0.43, carbohydrate: 71.97,
            sugars: 0.41, fibre: 10.7, ash: 1.58, sodium_mg: 2.0, starch: Starch::Printed(57.77),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(10, "White flour T45", "wheat, French pastry flour", Role::Flour)
        .ciqual(9440, Ciqual {
            water: 11.3, protein: 9.06, fat: 0.82, saturates: 0.13, available_carbohydrate: 75.9,
            sugars: 0.41, fibre: 2.5, ash: 0.48, sodium_mg: 39.0, starch: Starch::Printed(69.3),
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(11, "White flour T55", "wheat, French bread flour", Role::Flour)
        .ciqual(9436, Ciqual {
            water: 12.5, protein: 9.03, fat: 1.0, saturates: 0.19, available_carbohydrate: 73.7,
            sugars: 1.5, fibre: 3.2, ash: 0.54, starch: Starch::Printed(67.6), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(12, "White flour T65", "wheat, French, 13.6 % protein", Role::Flour)
        .ciqual(9435, Ciqual {
            water: 13.2, protein: 13.6, fat: 1.0, available_carbohydrate: 67.6, sugars: 1.5,
            fibre: 3.5, ash: 1.06, sodium_mg: 12.0, starch: Starch::Remainder, ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]).silent(&[Constituent::Saturates]),
    Ingredient::new(13, "Pale flour T80", "wheat, French, some bran", Role::Flour)
        .ciqual(9445, Ciqual {
            water: 10.7, protein: 9.95, fat: 1.18, saturates: 0.17, available_carbohydrate: 73.2,
            sugars: 1.77, fibre: 4.2, ash: 0.74, starch: Starch::Printed(70.6), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(14, "Brown flour T110", "wheat, French, much bran", Role::Flour)
        .ciqual(9410, Ciqual {
            water: 12.4, protein: 9.61, fat: 1.5, saturates: 0.27, available_carbohydrate: 68.6,
            sugars: 1.6, fibre: 6.8, ash: 1.09, starch: Starch::Printed(59.3), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(15, "Wholemeal flour T150", "wheat, French", Role::Flour)
        .ciqual(9415, Ciqual {
            water: 10.7, protein: 11.4, fat: 1.52, saturates: 0.22, available_carbohydrate: 64.9,
            sugars: 1.77, fibre: 10.2, ash: 1.31, sodium_mg: 14.0, starch: Starch::Printed(56.9),
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(20, "Semolina", "wheat", Role::Flour)
        .sr28(20066, Sr28 {
            water: 12.67, protein: 12.68, fat: 1.05, saturates: 0.15, carbohydrate: 72.83,
            fibre: 3.9, ash: 0.77, sodium_mg: 1.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]).silent(&[Constituent::Sugars]),
    Ingredient::new(21, "Wheat germ", "raw", Role::Inclusion)
        .sr28(20078, Sr28 {
            water: 11.12, protein: 23.15, fat: 9.72, saturates: 1.665, carbohydrate: 51.8,
            fibre: 13.2, ash: 4.21, sodium_mg: 12.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]).silent(&[Constituent::Sugars]),
    Ingredient::new(22, "Wheat gluten", "dried, 75 % protein", Role::Inclusion)
        .sr28(48052, Sr28 {
            water: 8.2, protein: 75.16, fat: 1.85, saturates: 0.272, carbohydrate: 13.79,
            fibre: 0.6, ash: 1.0, sodium_mg: 29.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(30, "Spelt flour", "", Role::Flour)
        .ciqual(9480, Ciqual {
            water: 10.8, protein: 11.4, fat: 3.0, saturates: 0.5, available_carbohydrate: 64.0,
            sugars: 1.3, fibre: 9.3, ash: 1.47, starch: Starch::Printed(62.2), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(31, "Spelt wholemeal", "figures of the whole grain", Role::Flour)
        .sr28(20140, Sr28 {
            water: 11.02, protein: 14.57, fat: 2.43, saturates: 0.406, carbohydrate: 70.19,
            sugars: 6.82, fibre: 10.7, ash: 1.78, sodium_mg: 8.0, starch: Starch::Printed(53.92),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Wheat]),
    Ingredient::new(40, "Light rye flour", "8 % fibre", Role::Flour)
        .sr28(20065, Sr28 {
            water: 11.4, protein: 9.82, fat: 1.33, saturates: 0.15, carbohydrate: 76.68,
            sugars: 0.93, fibre: 8.0, ash: 0.78, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Rye]),
    Ingredient::new(41, "Medium rye flour", "12 % fibre", Role::Flour)
        .sr28(20064, Sr28 {
            water: 10.97, protein: 10.88, fat: 1.52, saturates: 0.18, carbohydrate: 75.43,
            sugars: 1.1, fibre: 11.8, ash: 1.2, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Rye]),
    Ingredient::new(42, "Dark rye flour", "24 % fibre", Role::Flour)
        .sr28(20063, Sr28 {
            water: 10.75, protein: 15.91, fat: 2.22, saturates: 0.269, carbohydrate: 68.63,
            sugars: 2.31, fibre: 23.8, ash: 2.5, sodium_mg: 2.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Rye]),
    Ingredient::new(43, "Rye flour T85", "French, 7 % fibre", Role::Flour)
        .ciqual(9532, Ciqual {
            water: 12.0, protein: 8.12, fat: 1.37, saturates: 0.15, available_carbohydrate: 70.7,
            sugars: 0.93, fibre: 7.15, ash: 0.69, sodium_mg: 2.05, starch: Starch::Remainder,
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Rye]),
    Ingredient::new(44, "Rye flour T130", "French, 9.5 % fibre", Role::Flour)
        .ciqual(9533, Ciqual {
            water: 9.9, protein: 7.24, fat: 1.12, saturates: 0.22, available_carbohydrate: 70.9,
            sugars: 1.1, fibre: 9.5, ash: 1.38, sodium_mg: 2.45, starch: Starch::Printed(65.8),
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Rye]),
    Ingredient::new(50, "Rice flour", "white", Role::Flour)
        .sr28(20061, Sr28 {
            water: 11.89, protein: 5.95, fat: 1.42, saturates: 0.386, carbohydrate: 80.13,
            sugars: 0.12, fibre: 2.4, ash: 0.61, starch: Starch::Remainder, ..Sr28::EMPTY
        }),
    Ingredient::new(51, "Brown rice flour", "", Role::Flour)
        .sr28(20090, Sr28 {
            water: 11.97, protein: 7.23, fat: 2.78, saturates: 0.557, carbohydrate: 76.48,
            sugars: 0.66, fibre: 4.6, ash: 1.54, sodium_mg: 8.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(52, "Glutinous rice flour", "figures of the white grain", Role::Flour)
        .sr28(20054, Sr28 {
            water: 10.46, protein: 6.81, fat: 0.55, saturates: 0.111, carbohydrate: 81.68,
            fibre: 2.8, ash: 0.49, sodium_mg: 7.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).silent(&[Constituent::Sugars]),
    Ingredient::new(60, "Oat flour", "figures of the whole grain", Role::Flour)
        .sr28(20038, Sr28 {
            water: 8.22, protein: 16.89, fat: 6.9, saturates: 1.217, carbohydrate: 66.27,
            fibre: 10.6, ash: 1.72, sodium_mg: 2.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).allergens(&[Allergen::Oats]).silent(&[Constituent::Sugars]),
    Ingredient::new(61, "Rolled oats", "dry", Role::Inclusion)
        .sr28(8120, Sr28 {
            water: 10.84, protein: 13.15, fat: 6.52, saturates: 1.11, carbohydrate: 67.7,
            sugars: 0.99, fibre: 10.1, ash: 1.77, sodium_mg: 6.0, starch: Starch::Printed(57.92),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Oats]),
    Ingredient::new(65, "Barley malt flour", "", Role::Inclusion)
        .sr28(20131, Sr28 {
            water: 8.21, protein: 10.28, fat: 1.84, saturates: 0.386, carbohydrate: 78.3,
            sugars: 0.8, fibre: 7.1, ash: 1.37, sodium_mg: 11.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Barley]),
    Ingredient::new(70, "Buckwheat flour", "", Role::Flour)
        .ciqual(9540, Ciqual {
            water: 12.1, protein: 11.5, fat: 2.19, saturates: 0.33, available_carbohydrate: 68.4,
            sugars: 0.03, fibre: 4.2, ash: 1.65, sodium_mg: 16.8, starch: Starch::Printed(68.4),
            ..Ciqual::EMPTY
        }),
    Ingredient::new(75, "Potato flour", "whole potato, dried", Role::Flour)
        .sr28(11413, Sr28 {
            water: 6.52, protein: 6.9, fat: 0.34, saturates: 0.09, carbohydrate: 83.1,
            sugars: 3.52, fibre: 5.9, ash: 3.14, sodium_mg: 55.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
];
