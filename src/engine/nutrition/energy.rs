//! Energy: from nutrients by the factors of the two laws.

use super::nutrients::Nutrients;
use crate::engine::quantity::{FoodEnergy, OutOfRange};

/// Energy by annex XIV: carbohydrate and protein 17 kJ and 4 kcal a gram, fat 37 and 9, fibre 8
/// and 2, alcohol 29 and 7. Polyols and organic acids are not in the composition and are left out.
///
/// Source: Regulation (EU) No 1169/2011, annex XIV.
///
/// # Errors
/// [`OutOfRange`] for more than a tonne.
pub fn energy_eu(nutrients: &Nutrients) -> Result<FoodEnergy, OutOfRange> {
    let starchy = nutrients.carbohydrate.grams() + nutrients.protein.grams();
    let (fat, fibre) = (nutrients.fat.grams(), nutrients.fibre.grams());
    let alcohol = nutrients.alcohol.grams();
    FoodEnergy::from_both(
        17.0 * starchy + 37.0 * fat + 8.0 * fibre + 29.0 * alcohol,
        4.0 * starchy + 9.0 * fat + 2.0 * fibre + 7.0 * alcohol,
    )
}

/// Energy by the general factors 4, 4 and 9 kcal a gram, fibre left out of carbohydrate (from
/// memory); 4.184 kJ a kcal.
///
/// Source: 21 CFR 101.9(c)(1)(i).
///
/// # Errors
/// [`OutOfRange`] for more than a tonne.
pub fn energy_us(nutrients: &Nutrients) -> Result<FoodEnergy, OutOfRange> {
    let starchy = nutrients.carbohydrate.grams() + nutrients.protein.grams();
    let calories = 4.0 * starchy + 9.0 * nutrients.fat.grams() + 7.0 * nutrients.alcohol.grams();
    FoodEnergy::from_both(4.184 * calories, calories)
}
