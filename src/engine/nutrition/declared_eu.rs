//! Rounding in the EU.

use super::declared::{Declared, DeclaredEnergy, amount, nearest};
use super::nutrients::Nutrient;
use crate::engine::numerics::whole;
use crate::engine::quantity::{FoodEnergy, Mass};

/// The order of a declaration.
///
/// Source: Regulation (EU) No 1169/2011, annex XV.
pub(super) const ORDER: [Nutrient; 7] = [
    Nutrient::Fat,
    Nutrient::Saturates,
    Nutrient::Carbohydrate,
    Nutrient::Sugars,
    Nutrient::Fibre,
    Nutrient::Protein,
    Nutrient::Salt,
];

/// To whole kilojoules and kilocalories.
pub(super) fn energy(energy: FoodEnergy) -> DeclaredEnergy {
    DeclaredEnergy {
        kilojoules: Some(whole(energy.kilojoules() + 0.5)),
        kilocalories: whole(energy.kilocalories() + 0.5),
    }
}

/// Fat, carbohydrate, sugars, protein and fibre: from 10 g whole grams, above 0.5 g tenths.
/// Saturates: tenths above 0.1 g. Salt: from 1 g tenths, above 0.0125 g hundredths. What is less
/// is declared as below the limit, none as none.
///
/// Source: Commission guidance on tolerances for nutrition labelling (December 2012), table 4.
pub(super) fn eu(nutrient: Nutrient, mass: Mass) -> Declared {
    let (noughts, below, fine, coarse_from, coarse) = match nutrient {
        Nutrient::Saturates => (0.1, 0.1, (0.1, 1), 10.0, (1.0, 0)),
        Nutrient::Salt | Nutrient::Sodium => (0.0125, 0.01, (0.01, 2), 1.0, (0.1, 1)),
        Nutrient::Fat
        | Nutrient::Carbohydrate
        | Nutrient::TotalCarbohydrate
        | Nutrient::Sugars
        | Nutrient::Fibre
        | Nutrient::Protein => (0.5, 0.5, (0.1, 1), 10.0, (1.0, 0)),
    };
    let grams = mass.grams();
    if grams <= 0.0 {
        return Declared::Nothing;
    }
    if grams <= noughts {
        return Declared::Below(Mass::known(below));
    }
    let (step, places) = if grams >= coarse_from { coarse } else { fine };
    let rounded = nearest(grams, step);
    // 9.96 g round up to 10, which is then written as the limit asks.
    let places = if rounded >= coarse_from {
        coarse.1
    } else {
        places
    };
    amount(rounded, places)
}
