//! Plant drinks.
//!
//! Coconut is not among the allergens European law names.

use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Constituent, Ingredient, Role, packet};

#[allow(clippy::approx_constant, reason = "6.28 g of carbohydrate is no τ")]
#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(400, "Soya drink", "sweetened", Role::Liquid)
        .sr28(16120, Sr28 {
            water: 88.05, protein: 3.27, fat: 1.75, saturates: 0.205, carbohydrate: 6.28,
            sugars: 3.99, fibre: 0.6, ash: 0.65, sodium_mg: 51.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Soybeans]).packet(&packet::MADE_UP),
    Ingredient::new(401, "Soya drink, unsweetened", "", Role::Liquid)
        .sr28(16222, Sr28 {
            water: 93.14, protein: 2.86, fat: 1.61, saturates: 0.206, carbohydrate: 1.74,
            sugars: 0.41, fibre: 0.5, ash: 0.64, sodium_mg: 37.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Soybeans]).packet(&packet::MADE_UP),
    Ingredient::new(402, "Oat drink", "plain", Role::Liquid)
        .ciqual(18905, Ciqual {
            water: 90.5, fat: 1.1, saturates: 0.2, available_carbohydrate: 7.8, sugars: 5.0,
            sodium_mg: 26.4, starch: Starch::Printed(0.0), ..Ciqual::EMPTY
        }).allergens(&[Allergen::Oats]).packet(&packet::MADE_UP),
    Ingredient::new(403, "Almond drink", "sweetened, vanilla", Role::Liquid)
        .sr28(14016, Sr28 {
            water: 91.8, protein: 0.42, fat: 1.04, carbohydrate: 6.59, sugars: 6.25, fibre: 0.4,
            ash: 0.32, sodium_mg: 63.0, ..Sr28::EMPTY
        }).allergens(&[Allergen::Almonds]).packet(&packet::MADE_UP),
    Ingredient::new(404, "Almond drink, unsweetened", "1.1 % fat", Role::Liquid)
        .sr28(14091, Sr28 {
            water: 97.05, protein: 0.59, fat: 1.1, carbohydrate: 0.58, ash: 0.68, sodium_mg: 71.0,
            ..Sr28::EMPTY
        }).allergens(&[Allergen::Almonds]).packet(&packet::MADE_UP),
    Ingredient::new(405, "Almond drink, unsweetened", "3.2 % fat", Role::Liquid)
        .ciqual(18107, Ciqual {
            water: 94.6, protein: 1.06, fat: 3.2, saturates: 0.31, available_carbohydrate: 0.68,
            organic_acids: 0.019, ash: 0.19, sodium_mg: 20.5, starch: Starch::Printed(0.0),
            ..Ciqual::EMPTY
        }).allergens(&[Allergen::Almonds]).packet(&packet::MADE_UP),
    Ingredient::new(406, "Coconut milk", "tinned", Role::Liquid)
        .sr28(12118, Sr28 {
            water: 72.88, protein: 2.02, fat: 21.33, saturates: 18.915, carbohydrate: 2.81,
            ash: 0.97, sodium_mg: 13.0, ..Sr28::EMPTY
        }).silent(&[Constituent::Sugars, Constituent::Fibre]).packet(&packet::SULPHITED),
];
