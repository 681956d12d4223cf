//! Sugars, honey and syrups.
//!
//! The table counts all carbohydrate of corn and malt syrups as sugars, longer chains included.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(700, "White sugar", "granulated or caster", Role::Sugar)
        .sr28(19335, Sr28 {
            water: 0.02, carbohydrate: 99.98, sugars: 99.8, ash: 0.01, sodium_mg: 1.0,
            ..Sr28::EMPTY
        }),
    Ingredient::new(701, "Soft brown sugar", "", Role::Sugar)
        .sr28(19334, Sr28 {
            water: 1.34, protein: 0.12, carbohydrate: 98.09, sugars: 97.02, ash: 0.45,
            sodium_mg: 28.0, ..Sr28::EMPTY
        }),
    Ingredient::new(702, "Golden cane sugar", "raw, dry", Role::Sugar)
        .ciqual(31017, Ciqual {
            water: 1.31, protein: 0.12, available_carbohydrate: 97.3, sugars: 95.5, ash: 1.23,
            sodium_mg: 41.5, ..Ciqual::EMPTY
        }),
    Ingredient::new(703, "Icing sugar", "with a little starch", Role::Sugar)
        .sr28(19336, Sr28 {
            water: 0.23, carbohydrate: 99.77, sugars: 97.81, ash: 0.01, sodium_mg: 2.0,
            starch: Starch::Printed(1.26), ..Sr28::EMPTY
        }).packet(&packet::WITH_STARCH),
    Ingredient::new(710, "Honey", "", Role::Sugar)
        .sr28(19296, Sr28 {
            water: 17.1, protein: 0.3, carbohydrate: 82.4, sugars: 82.12, fibre: 0.2, ash: 0.2,
            sodium_mg: 4.0, ..Sr28::EMPTY
        }),
    Ingredient::new(711, "Molasses", "", Role::Sugar)
        .sr28(19304, Sr28 {
            water: 21.87, fat: 0.1, saturates: 0.018, carbohydrate: 74.73, sugars: 74.72, ash: 3.3,
            sodium_mg: 37.0, ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(712, "Maple syrup", "", Role::Sugar)
        .sr28(19353, Sr28 {
            water: 32.39, protein: 0.04, fat: 0.06, saturates: 0.007, carbohydrate: 67.04,
            sugars: 60.46, ash: 0.47, sodium_mg: 12.0, ..Sr28::EMPTY
        }),
    Ingredient::new(713, "Corn syrup", "light", Role::Sugar)
        .sr28(19350, Sr28 {
            water: 22.81, fat: 0.2, carbohydrate: 76.79, sugars: 76.77, ash: 0.2, sodium_mg: 62.0,
            ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(714, "Corn syrup, dark", "", Role::Sugar)
        .sr28(19349, Sr28 {
            water: 22.01, carbohydrate: 77.59, sugars: 77.59, ash: 0.4, sodium_mg: 155.0,
            ..Sr28::EMPTY
        }).packet(&packet::SULPHITED),
    Ingredient::new(715, "Malt syrup", "", Role::Sugar)
        .sr28(19352, Sr28 {
            water: 21.1, protein: 6.2, carbohydrate: 71.3, sugars: 71.3, ash: 1.3, sodium_mg: 35.0,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Barley]).packet(&packet::MADE_UP),
];
