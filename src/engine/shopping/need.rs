//! Needs: each ingredient once, from all parts together.

use crate::engine::formula::Formula;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;

/// The mass of an ingredient in all parts together.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// The ingredient.
    pub food: Food,
    /// How much of it.
    pub mass: Mass,
}

/// Every ingredient of a formula once, in the order it first appears; lines without a mass are left out.
#[must_use]
pub fn needs(formula: &Formula) -> Vec<Need> {
    let mut needs: Vec<Need> = Vec::new();
    for line in formula.parts.iter().flat_map(|part| &part.lines) {
        if line.mass <= Mass::ZERO {
            continue;
        }
        match needs.iter_mut().find(|need| need.food == line.food) {
            Some(need) => need.mass = need.mass + line.mass,
            None => needs.push(Need {
                food: line.food.clone(),
                mass: line.mass,
            }),
        }
    }
    needs
}
