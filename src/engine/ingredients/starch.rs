//! Starches.

use super::table::{Ciqual, Sr28, Starch};
use super::{Constituent, Ingredient, Role};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(100, "Cornflour", "maize starch", Role::Flour)
        .ciqual(9510, Ciqual {
            water: 9.26, protein: 0.43, fat: 0.25, saturates: 0.009, available_carbohydrate: 89.2,
            fibre: 0.8, ash: 0.09, sodium_mg: 10.2, starch: Starch::Printed(87.0), ..Ciqual::EMPTY
        }),
    Ingredient::new(101, "Potato starch", "", Role::Flour)
        .ciqual(4090, Ciqual {
            water: 12.7, fat: 0.2, saturates: 0.039, available_carbohydrate: 86.3, fibre: 0.55,
            ash: 0.25, sodium_mg: 3.75, starch: Starch::Remainder, ..Ciqual::EMPTY
        }).silent(&[Constituent::Sugars]),
    Ingredient::new(102, "Rice starch", "", Role::Flour)
        .ciqual(96781, Ciqual {
            water: 14.2, protein: 0.6, available_carbohydrate: 85.0, starch: Starch::Remainder,
            ..Ciqual::EMPTY
        }).silent(&[Constituent::Sugars, Constituent::Ash, Constituent::Sodium]),
    Ingredient::new(103, "Tapioca", "pearl, dry", Role::Flour)
        .sr28(20068, Sr28 {
            water: 10.99, protein: 0.19, fat: 0.02, saturates: 0.005, carbohydrate: 88.69,
            sugars: 3.35, fibre: 0.9, ash: 0.11, sodium_mg: 1.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
];
