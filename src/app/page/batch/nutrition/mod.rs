//! Nutrition, as a label law has it declared.

mod card;

pub use card::NutritionCard;
