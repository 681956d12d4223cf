//! Chocolate: will it run?

mod add;
mod answers;
mod curve_card;
mod doubts;
mod fill_card;
mod food_row;
mod keeping_card;
mod keys;
mod melt_card;
mod melt_fields;
mod place;
mod syrup_boxes;
mod syrup_card;
mod thickness;
mod weigh_card;

pub use answers::ChocolateAnswers;
pub use keys::ChocolateKeys;
pub use place::ChocolatePlace;
