//! Butter, oils and other fats.
//!
//! Refined soya oil need not be named in Europe; it is named here because the table does not say
//! how far it was refined. Unsalted margarine has the ash of the salted one in the table: as
//! printed.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(500, "Butter, unsalted", "81 % fat", Role::Fat)
        .sr28(1145, Sr28 {
            water: 17.94, protein: 0.85, fat: 81.11, saturates: 50.489, carbohydrate: 0.06,
            sugars: 0.06, ash: 0.09, sodium_mg: 11.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(501, "Butter, salted", "81 % fat", Role::Fat)
        .sr28(1001, Sr28 {
            water: 15.87, protein: 0.85, fat: 81.11, saturates: 51.368, carbohydrate: 0.06,
            sugars: 0.06, ash: 2.11, sodium_mg: 643.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(502, "Butter, unsalted", "83 % fat", Role::Fat)
        .ciqual(16400, Ciqual {
            water: 15.4, protein: 0.7, fat: 82.9, saturates: 55.4, available_carbohydrate: 0.9,
            sugars: 0.83, organic_acids: 0.1, sodium_mg: 25.0, starch: Starch::Printed(0.0),
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(503, "Butter, salted", "French, 2.5 % salt", Role::Fat)
        .ciqual(16403, Ciqual {
            water: 15.7, protein: 0.5, fat: 80.8, saturates: 52.9, available_carbohydrate: 0.68,
            organic_acids: 0.085, ash: 2.61, sodium_mg: 1010.0, ..Ciqual::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(510, "Margarine, unsalted", "80 % fat, block", Role::Fat)
        .sr28(4617, Sr28 {
            water: 16.52, protein: 0.16, fat: 80.71, saturates: 15.189, carbohydrate: 0.7,
            ash: 1.92, sodium_mg: 2.0, ..Sr28::EMPTY
        }).packet(&packet::MARGARINE),
    Ingredient::new(511, "Margarine, salted", "80 % fat, block", Role::Fat)
        .sr28(4610, Sr28 {
            water: 16.52, protein: 0.16, fat: 80.71, saturates: 15.189, carbohydrate: 0.7,
            ash: 1.92, sodium_mg: 751.0, ..Sr28::EMPTY
        }).packet(&packet::MARGARINE),
    Ingredient::new(512, "Vegetable shortening", "", Role::Fat)
        .sr28(4615, Sr28 {
            fat: 99.97, saturates: 24.98, ash: 0.03, sodium_mg: 4.0, ..Sr28::EMPTY
        }).packet(&packet::SHORTENING),
    Ingredient::new(513, "Lard", "", Role::Fat)
        .sr28(4002, Sr28 {
            fat: 100.0, saturates: 39.2, ..Sr28::EMPTY
        }),
    Ingredient::new(520, "Rapeseed oil", "", Role::Fat)
        .sr28(4582, Sr28 {
            fat: 100.0, saturates: 7.365, ..Sr28::EMPTY
        }),
    Ingredient::new(521, "Sunflower oil", "", Role::Fat)
        .sr28(4506, Sr28 {
            fat: 100.0, saturates: 10.3, ..Sr28::EMPTY
        }),
    Ingredient::new(522, "Olive oil", "", Role::Fat)
        .sr28(4053, Sr28 {
            fat: 100.0, saturates: 13.808, sodium_mg: 2.0, ..Sr28::EMPTY
        }),
    Ingredient::new(523, "Soya oil", "", Role::Fat)
        .sr28(4044, Sr28 {
            fat: 100.0, saturates: 15.65, ..Sr28::EMPTY
        }).allergens(&[Allergen::Soybeans]),
    Ingredient::new(524, "Coconut oil", "", Role::Fat)
        .sr28(4047, Sr28 {
            water: 0.03, fat: 99.06, saturates: 82.475, ash: 0.03, ..Sr28::EMPTY
        }),
];
