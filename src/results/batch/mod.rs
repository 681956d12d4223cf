//! Batch: the formula scaled to its target, as the scales show it, and its results.
//!
//! [`of`] returns the batch itself. Each result of a batch has a module: how another target
//! asks for the same batch, what to weigh, how dough is divided, tins, labels, shopping, a class.

pub mod allergens;
mod batch_results;
pub mod class;
pub mod class_batch;
pub mod class_cards;
pub mod class_weighed;
pub mod dividing;
pub mod nutrition;
pub mod shopping;
mod small_mass;
pub mod target;
pub mod tins;
pub mod weighing;

pub use batch_results::{BatchResults, as_formula, of, scale, scaled_formula};
pub use small_mass::is_told;
