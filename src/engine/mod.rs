//! The arithmetic and the physics of the dough.
//!
//! No web, clock, randomness or storage, and no sentences for users. Every public function
//! returns for every argument. In reading order: quantities, numerical methods, the larder of ingredients, the
//! formula and its water, the batch, tins, nutrition, shopping, the class, heat, chocolate, the
//! rise, the plan, what bakes teach, and what a line of working is.

pub mod batch;
pub mod chocolate;
pub mod class;
pub mod formula;
pub mod heat;
pub mod ingredients;
pub mod learn;
pub mod numerics;
pub mod nutrition;
pub mod plan;
pub mod quantity;
pub mod rise;
pub mod shopping;
pub mod tin;
pub mod working;
