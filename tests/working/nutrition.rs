//! The working of nutrition: every nutrient of every example, and its energy by both laws.

use softcrumb::engine::batch::scale;
use softcrumb::engine::nutrition::{LabelLaw, Nutrient, nutrition};
use softcrumb::sheet::examples;

use crate::rule_evaluator::adds_up;

const ALL: [Nutrient; 9] = [
    Nutrient::Fat,
    Nutrient::Saturates,
    Nutrient::Carbohydrate,
    Nutrient::TotalCarbohydrate,
    Nutrient::Sugars,
    Nutrient::Fibre,
    Nutrient::Protein,
    Nutrient::Salt,
    Nutrient::Sodium,
];

#[test]
fn every_nutrient_adds_up() {
    for (_, sheet) in examples() {
        let batch = &sheet.batch;
        let scaled = scale(&sheet.formula, batch.wanted, batch.losses, batch.pieces).unwrap();
        let found = nutrition(&scaled).unwrap();
        for nutrient in ALL {
            adds_up(&found.working_of(nutrient));
        }
        let hundred = found.in_hundred_grams();
        for law in LabelLaw::ALL {
            let energy = hundred.energy(law).unwrap();
            adds_up(&hundred.working_of_energy(law, energy));
        }
    }
}
