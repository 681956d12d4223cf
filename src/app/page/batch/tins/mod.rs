//! Tins: how much they take, how full and how high, and the user's own.

mod card;
mod fields;
mod plan;
mod saved;

pub use card::{TinBody, TinCard};
