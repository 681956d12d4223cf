//! Chocolate, cocoa and cocoa butter.
//!
//! Cocoa share: the middle of the range in the table's name. Where the name gives none: for plain
//! chocolate what its sugar leaves room for; for milk and white chocolate the least that may be
//! sold under that name in Europe, Directive 2000/36/EC annex I (white: cocoa butter).
//!
//! The table finds milk sugar in two of its dark chocolates, so milk is named for them.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(1000, "Dark chocolate", "45 to 59 % cocoa", Role::Chocolate)
        .sr28(19902, Sr28 {
            water: 0.97, protein: 4.88, fat: 31.28, saturates: 18.519, carbohydrate: 61.17,
            sugars: 47.9, fibre: 7.0, ash: 1.7, sodium_mg: 24.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(52.0).packet(&packet::DARK_WITH_MILK),
    Ingredient::new(1001, "Dark chocolate", "60 to 69 % cocoa", Role::Chocolate)
        .sr28(19903, Sr28 {
            water: 1.25, protein: 6.12, fat: 38.31, saturates: 22.031, carbohydrate: 52.42,
            sugars: 36.71, fibre: 8.0, ash: 1.9, sodium_mg: 10.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(64.5).packet(&packet::DARK_WITH_MILK),
    Ingredient::new(1002, "Dark chocolate", "70 to 85 % cocoa", Role::Chocolate)
        .sr28(19904, Sr28 {
            water: 1.37, protein: 7.79, fat: 42.63, saturates: 24.489, carbohydrate: 45.9,
            sugars: 23.99, fibre: 10.9, ash: 2.32, sodium_mg: 20.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(77.5).packet(&packet::BITTER),
    Ingredient::new(1003, "Dark chocolate", "70 % cocoa, French", Role::Chocolate)
        .ciqual(31074, Ciqual {
            water: 0.9, protein: 10.4, fat: 46.3, saturates: 28.7, available_carbohydrate: 26.9,
            sugars: 17.9, fibre: 12.8, ash: 2.74, sodium_mg: 8.0, starch: Starch::Printed(4.4),
            ..Ciqual::EMPTY
        }).cocoa(70.0).packet(&packet::BITTER),
    Ingredient::new(1004, "Semisweet chocolate", "about 45 % cocoa", Role::Chocolate)
        .sr28(19080, Sr28 {
            water: 0.7, protein: 4.2, fat: 30.0, saturates: 17.75, carbohydrate: 63.9,
            sugars: 54.5, fibre: 5.9, ash: 1.2, sodium_mg: 11.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(45.0).packet(&packet::DARK),
    Ingredient::new(1005, "Unsweetened chocolate", "100 % cocoa", Role::Chocolate)
        .sr28(19078, Sr28 {
            water: 1.34, protein: 14.32, fat: 52.31, saturates: 32.277, carbohydrate: 28.42,
            sugars: 0.91, fibre: 16.6, ash: 3.6, sodium_mg: 24.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(100.0).packet(&packet::BITTER),
    Ingredient::new(1010, "Milk chocolate", "30 % fat", Role::Chocolate)
        .sr28(19120, Sr28 {
            water: 1.5, protein: 7.65, fat: 29.66, saturates: 18.509, carbohydrate: 59.4,
            sugars: 51.5, fibre: 3.4, ash: 1.78, sodium_mg: 79.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]).cocoa(25.0).packet(&packet::MILK_CHOCOLATE),
    Ingredient::new(1011, "Milk chocolate", "31 % fat, French", Role::Chocolate)
        .ciqual(31004, Ciqual {
            water: 0.7, protein: 7.5, fat: 30.8, saturates: 18.7, available_carbohydrate: 55.6,
            sugars: 53.1, fibre: 2.9, organic_acids: 0.54, ash: 1.99, sodium_mg: 78.0,
            starch: Starch::Printed(2.45), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Milk]).cocoa(25.0).packet(&packet::MILK_CHOCOLATE),
    Ingredient::new(1012, "White chocolate", "", Role::Chocolate)
        .sr28(19087, Sr28 {
            water: 1.3, protein: 5.87, fat: 32.09, saturates: 19.412, carbohydrate: 59.24,
            sugars: 59.0, fibre: 0.2, ash: 1.5, sodium_mg: 90.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Milk]).cocoa(20.0).packet(&packet::MILK_CHOCOLATE),
    Ingredient::new(1020, "Cocoa powder", "14 % fat", Role::Chocolate)
        .sr28(19165, Sr28 {
            water: 3.0, protein: 19.6, fat: 13.7, saturates: 8.07, carbohydrate: 57.9,
            sugars: 1.75, fibre: 37.0, ash: 5.8, sodium_mg: 21.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(100.0),
    Ingredient::new(1021, "Cocoa powder, alkalised", "13 % fat", Role::Chocolate)
        .sr28(19166, Sr28 {
            water: 2.7, protein: 18.1, fat: 13.1, saturates: 7.76, carbohydrate: 58.3,
            sugars: 1.76, fibre: 29.8, ash: 7.8, sodium_mg: 19.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(100.0),
    Ingredient::new(1022, "Cocoa powder, full-fat", "24 % fat", Role::Chocolate)
        .sr28(19859, Sr28 {
            water: 3.0, protein: 16.8, fat: 23.71, saturates: 12.64, carbohydrate: 51.39,
            sugars: 1.55, fibre: 29.8, ash: 5.1, sodium_mg: 20.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).cocoa(100.0),
    Ingredient::new(1023, "Cocoa butter", "", Role::Chocolate)
        .sr28(4501, Sr28 {
            fat: 100.0, saturates: 59.7, ..Sr28::EMPTY
        }).cocoa(100.0),
    Ingredient::new(1030, "Hazelnut and chocolate spread", "", Role::Chocolate)
        .sr28(19125, Sr28 {
            water: 1.07, protein: 5.41, fat: 29.73, saturates: 28.423, carbohydrate: 62.16,
            sugars: 54.05, fibre: 5.4, ash: 1.44, sodium_mg: 41.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Hazelnuts]).packet(&packet::HAZELNUT_SPREAD),
];
