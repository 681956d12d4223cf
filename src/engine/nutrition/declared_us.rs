//! Rounding in the US.

use super::declared::{Declared, DeclaredEnergy, amount, nearest};
use super::nutrients::Nutrient;
use crate::engine::numerics::whole;
use crate::engine::quantity::{FoodEnergy, Mass};

/// The order of a declaration. Trans fat, cholesterol, added sugars, vitamins and minerals are
/// not in the composition and are left out.
pub(super) const ORDER: [Nutrient; 7] = [
    Nutrient::Fat,
    Nutrient::Saturates,
    Nutrient::Sodium,
    Nutrient::TotalCarbohydrate,
    Nutrient::Fibre,
    Nutrient::Sugars,
    Nutrient::Protein,
];

/// Calories: below 5 none, up to 50 by fives, above by tens.
///
/// Source: 21 CFR 101.9(c)(1).
pub(super) fn energy(energy: FoodEnergy) -> DeclaredEnergy {
    let calories = energy.kilocalories();
    let rounded = match calories {
        few if few < 5.0 => 0.0,
        some if some <= 50.0 => nearest(some, 5.0),
        many => nearest(many, 10.0),
    };
    DeclaredEnergy {
        kilojoules: None,
        kilocalories: whole(rounded),
    }
}

/// Fat and saturates: below 0.5 g none, below 5 g by halves, then whole grams. Sodium: below 5 mg
/// none, up to 140 mg by fives, above by tens. The others: below 0.5 g none, below 1 g "less than
/// 1 g", then whole grams.
///
/// Source: 21 CFR 101.9(c)(2) to (7).
pub(super) fn us(nutrient: Nutrient, mass: Mass) -> Declared {
    let grams = mass.grams();
    match nutrient {
        Nutrient::Fat | Nutrient::Saturates => match grams {
            trace if trace < 0.5 => Declared::Nothing,
            few if few < 5.0 => {
                let halves = nearest(few, 0.5);
                amount(halves, u8::from(halves < 5.0))
            }
            many => amount(nearest(many, 1.0), 0),
        },
        Nutrient::Sodium | Nutrient::Salt => match grams * 1000.0 {
            trace if trace < 5.0 => Declared::Nothing,
            few if few <= 140.0 => amount(nearest(few, 5.0) / 1000.0, 0),
            many => amount(nearest(many, 10.0) / 1000.0, 0),
        },
        Nutrient::Carbohydrate
        | Nutrient::TotalCarbohydrate
        | Nutrient::Sugars
        | Nutrient::Fibre
        | Nutrient::Protein => match grams {
            trace if trace < 0.5 => Declared::Nothing,
            few if few < 1.0 => Declared::Below(Mass::known(1.0)),
            many => amount(nearest(many, 1.0), 0),
        },
    }
}
