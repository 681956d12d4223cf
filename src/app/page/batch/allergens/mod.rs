//! Allergens of the ingredients, of packets and of the kitchen.

mod card;
mod marked;

pub use card::AllergenCard;
pub use marked::Marked;
