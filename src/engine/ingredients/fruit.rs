//! Fruit, juices and vegetable purées.

use super::table::{Sr28, Starch};
use super::{Allergen, Constituent, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(1200, "Raisins", "seedless", Role::Inclusion)
        .sr28(9298, Sr28 {
            water: 15.43, protein: 3.07, fat: 0.46, saturates: 0.058, carbohydrate: 79.18,
            sugars: 59.19, fibre: 3.7, ash: 1.85, sodium_mg: 11.0, starch: Starch::Printed(2.7),
            ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(1201, "Dried apricots", "sulphured", Role::Inclusion)
        .sr28(9032, Sr28 {
            water: 30.89, protein: 3.39, fat: 0.51, saturates: 0.017, carbohydrate: 62.64,
            sugars: 53.44, fibre: 7.3, ash: 2.57, sodium_mg: 10.0, starch: Starch::Printed(0.35),
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Sulphites]),
    Ingredient::new(1202, "Dried cranberries", "sweetened", Role::Inclusion)
        .sr28(9079, Sr28 {
            water: 15.79, protein: 0.17, fat: 1.09, saturates: 0.088, carbohydrate: 82.8,
            sugars: 72.56, fibre: 5.3, ash: 0.15, sodium_mg: 5.0, ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(1210, "Orange juice", "fresh", Role::Liquid)
        .sr28(9206, Sr28 {
            water: 88.3, protein: 0.7, fat: 0.2, saturates: 0.024, carbohydrate: 10.4, sugars: 8.4,
            fibre: 0.2, ash: 0.4, sodium_mg: 1.0, ..Sr28::EMPTY
        }),
    Ingredient::new(1211, "Lemon juice", "fresh", Role::Liquid)
        .sr28(9152, Sr28 {
            water: 92.31, protein: 0.35, fat: 0.24, saturates: 0.04, carbohydrate: 6.9,
            sugars: 2.52, fibre: 0.3, ash: 0.21, sodium_mg: 1.0, starch: Starch::Printed(0.0),
            ..Sr28::EMPTY
        }),
    Ingredient::new(1212, "Orange peel", "fresh", Role::Inclusion)
        .sr28(9216, Sr28 {
            water: 72.5, protein: 1.5, fat: 0.2, saturates: 0.024, carbohydrate: 25.0, fibre: 10.6,
            ash: 0.8, sodium_mg: 3.0, ..Sr28::EMPTY
        }).silent(&[Constituent::Sugars]),
    Ingredient::new(1220, "Pumpkin", "boiled, drained", Role::Inclusion)
        .sr28(11423, Sr28 {
            water: 93.69, protein: 0.72, fat: 0.07, saturates: 0.037, carbohydrate: 4.9,
            sugars: 2.08, fibre: 1.1, ash: 0.62, sodium_mg: 1.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1221, "Pumpkin purée", "tinned", Role::Inclusion)
        .sr28(11424, Sr28 {
            water: 89.97, protein: 1.1, fat: 0.28, saturates: 0.146, carbohydrate: 8.09,
            sugars: 3.3, fibre: 2.9, ash: 0.56, sodium_mg: 5.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }).packet(&packet::MADE_UP),
    Ingredient::new(1222, "Sweet potato", "baked in its skin, flesh", Role::Inclusion)
        .sr28(11508, Sr28 {
            water: 75.78, protein: 2.01, fat: 0.15, saturates: 0.052, carbohydrate: 20.71,
            sugars: 6.48, fibre: 3.3, ash: 1.35, sodium_mg: 36.0, starch: Starch::Printed(7.05),
            ..Sr28::EMPTY
        }),
    Ingredient::new(1223, "Sweet potato", "boiled, peeled", Role::Inclusion)
        .sr28(11510, Sr28 {
            water: 80.13, protein: 1.37, fat: 0.14, saturates: 0.031, carbohydrate: 17.72,
            sugars: 5.74, fibre: 2.5, ash: 0.63, sodium_mg: 27.0, starch: Starch::Printed(5.22),
            ..Sr28::EMPTY
        }),
    Ingredient::new(1224, "Potato", "boiled, peeled", Role::Inclusion)
        .sr28(11367, Sr28 {
            water: 77.46, protein: 1.71, fat: 0.1, saturates: 0.026, carbohydrate: 20.01,
            sugars: 0.89, fibre: 1.8, ash: 0.72, sodium_mg: 5.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1225, "Potato", "boiled in its skin, flesh", Role::Inclusion)
        .sr28(11365, Sr28 {
            water: 76.98, protein: 1.87, fat: 0.1, saturates: 0.026, carbohydrate: 20.13,
            sugars: 0.91, fibre: 1.8, ash: 0.92, sodium_mg: 4.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1226, "Potato", "baked, flesh", Role::Inclusion)
        .sr28(11363, Sr28 {
            water: 75.42, protein: 1.96, fat: 0.1, saturates: 0.026, carbohydrate: 21.55,
            sugars: 1.7, fibre: 1.5, ash: 0.97, sodium_mg: 5.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
];
