//! Milks, creams, milk powders, yoghurt and cheese.
//!
//! In some American rows sugars stand above carbohydrate, because sugars were measured and
//! carbohydrate is what was left over. They are kept as printed.
//! Evaporated milk has no figure for sugars: all its carbohydrate is taken for milk sugar.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Constituent, Ingredient, Role};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(300, "Whole milk", "3.25 % fat", Role::Liquid)
        .sr28(1077, Sr28 {
            water: 88.13, protein: 3.15, fat: 3.25, saturates: 1.865, carbohydrate: 4.8,
            sugars: 5.05, ash: 0.67, sodium_mg: 43.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(301, "Part-skimmed milk", "2 % fat", Role::Liquid)
        .sr28(1079, Sr28 {
            water: 89.21, protein: 3.3, fat: 1.98, saturates: 1.257, carbohydrate: 4.8,
            sugars: 5.06, ash: 0.71, sodium_mg: 47.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(302, "Low-fat milk", "1 % fat", Role::Liquid)
        .sr28(1082, Sr28 {
            water: 89.92, protein: 3.37, fat: 0.97, saturates: 0.633, carbohydrate: 4.99,
            sugars: 5.2, ash: 0.75, sodium_mg: 44.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(303, "Skimmed milk", "", Role::Liquid)
        .sr28(1085, Sr28 {
            water: 90.84, protein: 3.37, fat: 0.08, saturates: 0.056, carbohydrate: 4.96,
            sugars: 5.09, ash: 0.75, sodium_mg: 42.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(304, "Whole milk, long-life", "3.6 % fat", Role::Liquid)
        .ciqual(19023, Ciqual {
            water: 87.5, protein: 3.32, fat: 3.63, saturates: 2.4, available_carbohydrate: 4.85,
            sugars: 4.2, ash: 0.7, sodium_mg: 44.2, starch: Starch::Printed(0.0), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(305, "Semi-skimmed milk, long-life", "1.55 % fat", Role::Liquid)
        .ciqual(19041, Ciqual {
            water: 89.4, protein: 3.38, fat: 1.55, saturates: 1.04, available_carbohydrate: 4.83,
            sugars: 4.66, organic_acids: 0.17, ash: 0.69, sodium_mg: 36.0,
            starch: Starch::Printed(0.0), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(310, "Buttermilk", "cultured, low fat", Role::Liquid)
        .sr28(1088, Sr28 {
            water: 90.13, protein: 3.31, fat: 0.88, saturates: 0.548, carbohydrate: 4.79,
            sugars: 4.79, ash: 0.89, sodium_mg: 190.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(311, "Yoghurt", "plain, whole milk", Role::Dairy)
        .sr28(1116, Sr28 {
            water: 87.9, protein: 3.47, fat: 3.25, saturates: 2.096, carbohydrate: 4.66,
            sugars: 4.66, ash: 0.72, sodium_mg: 46.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(312, "Low-fat yoghurt", "plain", Role::Dairy)
        .sr28(1117, Sr28 {
            water: 85.07, protein: 5.25, fat: 1.55, saturates: 1.0, carbohydrate: 7.04,
            sugars: 7.04, ash: 1.09, sodium_mg: 70.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(320, "Half cream", "10 % fat", Role::Liquid)
        .sr28(1049, Sr28 {
            water: 81.24, protein: 3.13, fat: 10.39, saturates: 7.032, carbohydrate: 4.73,
            sugars: 4.13, ash: 0.51, sodium_mg: 61.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(321, "Whipping cream", "31 % fat", Role::Liquid)
        .sr28(1052, Sr28 {
            water: 63.5, protein: 2.17, fat: 30.91, saturates: 19.337, carbohydrate: 2.96,
            sugars: 2.96, ash: 0.46, sodium_mg: 34.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(322, "Rich whipping cream", "36 % fat", Role::Liquid)
        .sr28(1053, Sr28 {
            water: 57.81, protein: 2.84, fat: 36.08, saturates: 23.032, carbohydrate: 2.74,
            sugars: 2.92, ash: 0.53, sodium_mg: 27.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(323, "Soured cream", "19 % fat", Role::Dairy)
        .sr28(1056, Sr28 {
            water: 73.07, protein: 2.44, fat: 19.35, saturates: 10.14, carbohydrate: 4.63,
            sugars: 3.41, ash: 0.51, sodium_mg: 31.0, starch: Starch::Printed(0.0), ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(324, "Cream cheese", "34 % fat", Role::Dairy)
        .sr28(1017, Sr28 {
            water: 52.62, protein: 6.15, fat: 34.44, saturates: 20.213, carbohydrate: 5.52,
            sugars: 3.76, ash: 1.27, sodium_mg: 314.0, starch: Starch::Printed(0.35),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(330, "Evaporated milk", "whole, tinned", Role::Liquid)
        .sr28(1153, Sr28 {
            water: 74.04, protein: 6.81, fat: 7.56, saturates: 4.591, carbohydrate: 10.04,
            sugars: 10.04, ash: 1.55, sodium_mg: 106.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]).silent(&[Constituent::Sugars]),
    Ingredient::new(331, "Condensed milk", "sweetened, tinned", Role::Dairy)
        .sr28(1095, Sr28 {
            water: 27.16, protein: 7.91, fat: 8.7, saturates: 5.486, carbohydrate: 54.4,
            sugars: 54.4, ash: 1.83, sodium_mg: 127.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(340, "Whole milk powder", "", Role::Dairy)
        .sr28(1090, Sr28 {
            water: 2.47, protein: 26.32, fat: 26.71, saturates: 16.742, carbohydrate: 38.42,
            sugars: 38.42, ash: 6.08, sodium_mg: 371.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(341, "Skimmed milk powder", "", Role::Dairy)
        .sr28(1091, Sr28 {
            water: 3.16, protein: 36.16, fat: 0.77, saturates: 0.499, carbohydrate: 51.98,
            sugars: 51.98, ash: 7.93, sodium_mg: 535.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
    Ingredient::new(342, "Skimmed milk powder, instant", "", Role::Dairy)
        .sr28(1092, Sr28 {
            water: 3.96, protein: 35.1, fat: 0.72, saturates: 0.467, carbohydrate: 52.19,
            sugars: 52.19, ash: 8.03, sodium_mg: 549.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]),
];
