//! Error messages: what is wrong and what to do, in a sentence or two.
//!
//! One match for each error type, without a catch-all: a new variant does not compile until it
//! has its message.

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

pub use reported::ErrorText;
