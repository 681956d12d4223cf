//! Chocolate: will it run?

mod add;
mod curve_card;
mod doubts;
mod fill_card;
mod food_row;
mod keeping_card;
mod key_figures;
mod melt_card;
mod melt_fields;
mod place;
mod rescue_card;
mod results;
mod syrup_boxes;
mod syrup_card;
mod thickness;
mod weigh_card;

pub use key_figures::ChocolateKeys;
pub use place::ChocolatePlace;
pub use results::ChocolateContext;
