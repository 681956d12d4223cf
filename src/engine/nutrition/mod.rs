//! Nutrition and allergens: what is in the bread, and what must be named. Estimates from
//! composition tables, never a label in law.

mod allergens;
mod declare;
mod declared;
mod declared_eu;
mod declared_us;
mod eaten;
mod energy;
mod error;
mod law;
mod nutrients;
mod working;

pub use allergens::{AllergenRow, AllergenSource, FoodMark, Marks, allergens, unread_packets};
pub use declare::declare;
pub use declared::{Declared, DeclaredEnergy, DeclaredLine};
pub use eaten::{Nutrition, nutrition};
pub use energy::{energy_eu, energy_us};
pub use error::NutritionError;
pub use law::{EuGroup, LabelLaw, UsMajor};
pub use nutrients::{Nutrient, Nutrients};
