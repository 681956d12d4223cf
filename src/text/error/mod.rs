//! Trouble: what is wrong, and what to do about it, in a sentence or two.
//!
//! One match for each kind of trouble, with no catch-all: a new one does not compile until
//! it has its words.

mod batch;
mod chocolate;
mod class;
mod formula;
mod heat;
mod interchange;
mod label;
mod ingredients;
mod link;
mod plan;
mod reading;
mod record;
mod rise;
mod reported;

pub use reported::Trouble;
