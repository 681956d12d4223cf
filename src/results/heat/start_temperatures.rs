//! The temperature each ingredient, paste and preferment starts at in this kitchen.

use crate::engine::formula::{Line, Part};
use crate::engine::ingredients::Role;
use crate::engine::quantity::Temperature;
use crate::sheet::Kitchen;

/// Where ice melts.
const MELTS: Temperature = Temperature::known(0.0);

/// Returns the line's own temperature in °C, or that of the place where such an ingredient is
/// stored. Ice comes from the freezer and is never warmer than 0 °C.
#[must_use]
pub fn line_start(line: &Line, kitchen: &Kitchen) -> Temperature {
    if line.food.is_ice() {
        let own = line.temperature.unwrap_or(kitchen.surroundings().freezer);
        return if own > MELTS { MELTS } else { own };
    }
    line.temperature
        .unwrap_or_else(|| stored_at(line.food.role(), kitchen))
}

/// The part's own temperature, or the fridge's.
///
/// ```
/// use softcrumb::results::heat::part_start;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let kitchen = Kitchen::default();
/// // Parts come from the fridge unless they have a temperature of their own.
/// assert!(sheet.formula.parts.iter().all(|part| part_start(part, &kitchen) == kitchen.fridge));
/// ```
#[must_use]
pub fn part_start(part: &Part, kitchen: &Kitchen) -> Temperature {
    part.temperature.unwrap_or(kitchen.fridge)
}

/// Where such an ingredient is stored. Common practice.
const fn stored_at(role: Role, kitchen: &Kitchen) -> Temperature {
    match role {
        Role::Flour => kitchen.flour_at(),
        Role::Water => kitchen.tap,
        Role::Liquid | Role::Dairy | Role::Egg | Role::Yeast => kitchen.fridge,
        Role::Fat | Role::Sugar | Role::Salt | Role::Chocolate | Role::Inclusion => kitchen.room,
    }
}
