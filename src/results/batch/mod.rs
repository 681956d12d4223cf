//! Batch: the formula scaled to its target, as the scales show it, and what is made of it.
//!
//! [`of`] gives the batch itself. What follows from a batch is a module each: how another target
//! asks for the same batch, what to weigh, how dough is divided, tins, labels, shopping, a class.

pub mod allergens;
mod batch_results;
pub mod class;
pub mod dividing;
pub mod nutrition;
pub mod shopping;
pub mod target;
pub mod tins;
pub mod weighing;

pub use batch_results::{BatchResults, as_formula, of, scale, scaled_formula};
