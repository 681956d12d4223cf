//! The lower half of Batch: tins, labels, shopping, the class. Loaded after the upper half.

mod allergen_card;
mod cards;
mod class_boxes;
mod class_card;
mod nutrition_card;
mod pantry_box;
mod shopping_card;
mod tin_boxes;
mod tin_card;
mod tin_plan;
mod tin_shelf;

pub use cards::ClassCards;
pub use tin_card::TinCard;
