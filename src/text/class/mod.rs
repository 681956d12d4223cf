//! Tins, labels, shopping and the class, told part by part: each function gives a whole view.

mod allergens;
mod benches;
mod nutrition;
mod shopping;
mod tin;

pub use allergens::{AllergenLine, AllergenView, allergens};
pub use benches::{BenchView, ClassView, PartLines, class};
pub use nutrition::{NutritionRow, NutritionView, nutrition};
pub use shopping::{ShoppingRow, ShoppingView, shopping};
pub use tin::{TinView, tin, tin_measures};
