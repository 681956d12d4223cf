//! Trouble: what is wrong, and what to do about it, in a sentence or two.
//!
//! One match for each kind of trouble, with no catch-all: a new one does not compile until
//! it has its words.

mod batch;
mod chocolate;
mod class;
mod formula;
mod heat;
mod ingredients;
mod interchange;
mod label;
mod link;
mod plan;
mod reading;
mod record;
mod reported;
mod rise;

pub use reported::Trouble;
