//! The larder: what is in each ingredient, with the table and number it was read from.
//!
//! To add an ingredient: give it a free number in its family's hundred, in the order of the
//! numbers; copy its line from one of the two tables, figure by figure; name what the table
//! leaves blank with `silent`, what the food is or is made from with `allergens`, and what its makers add with `packet`. The checks
//! in `tests/published/` hold every figure against the table, those in `tests/larder/` hold that
//! no number ever changes its meaning.

mod allergen;
mod composition;
mod constituent;
mod food;
mod from_label;
mod ingredient;
mod label;
mod label_error;
mod listed;
mod own;
mod packet;
mod printed;
mod role;
mod source;
mod table;

mod chocolate;
mod dairy;
mod egg;
mod fat;
mod flavour;
mod flour;
mod fruit;
mod nut;
mod plant_drink;
mod salt;
mod starch;
mod sugar;
mod water;
mod yeast;

pub use allergen::Allergen;
pub use composition::Composition;
pub use constituent::Constituent;
pub use food::Food;
pub use ingredient::Ingredient;
pub use label::{Label, LabelLine};
pub use label_error::LabelError;
pub use listed::{Listed, UnknownIngredient};
pub use own::OwnFood;
pub use packet::{Packet, Presence};
pub use role::Role;
pub use source::Source;
