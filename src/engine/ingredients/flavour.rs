//! Spices, flavourings and drinks.

use super::table::{Sr28, Starch};
use super::{Constituent, Ingredient, Role, packet};

#[rustfmt::skip] // one food is a short paragraph, not a column
pub(super) const ROWS: &[Ingredient] = &[
    Ingredient::new(1300, "Cinnamon", "ground", Role::Inclusion)
        .sr28(2010, Sr28 {
            water: 10.58, protein: 3.99, fat: 1.24, saturates: 0.345, carbohydrate: 80.59,
            sugars: 2.17, fibre: 53.1, ash: 3.6, sodium_mg: 10.0, starch: Starch::Remainder,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1301, "Cardamom", "ground", Role::Inclusion)
        .sr28(2006, Sr28 {
            water: 8.28, protein: 10.76, fat: 6.7, saturates: 0.68, carbohydrate: 68.47,
            fibre: 28.0, ash: 5.78, sodium_mg: 18.0, starch: Starch::Remainder, ..Sr28::EMPTY
        }).silent(&[Constituent::Sugars]),
    Ingredient::new(1310, "Vanilla extract", "", Role::Inclusion)
        .sr28(2050, Sr28 {
            water: 52.58, protein: 0.06, fat: 0.06, saturates: 0.01, carbohydrate: 12.65,
            sugars: 12.65, ash: 0.26, sodium_mg: 9.0, alcohol: 34.4, ..Sr28::EMPTY
        }).packet(&packet::MADE_UP),
    Ingredient::new(1311, "Coffee", "brewed", Role::Liquid)
        .sr28(14209, Sr28 {
            water: 99.39, protein: 0.12, fat: 0.02, saturates: 0.002, ash: 0.35, sodium_mg: 2.0,
            ..Sr28::EMPTY
        }),
    Ingredient::new(1312, "Rum", "40 % by volume", Role::Liquid)
        .sr28(14050, Sr28 {
            water: 66.6, ash: 0.01, sodium_mg: 1.0, alcohol: 33.4, ..Sr28::EMPTY
        }),
];
