//! Shopping: packs, their cost, and what is known of each ingredient.

mod card;
mod pantry;

pub use card::ShoppingCard;
