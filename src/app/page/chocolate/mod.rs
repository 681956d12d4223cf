//! Chocolate: its place and its key figures.

mod keys;
mod place;

pub use keys::ChocolateKeys;
pub use place::ChocolatePlace;
