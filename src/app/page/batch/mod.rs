//! Batch: its place and its key figures.

mod keys;
mod place;

pub use keys::BatchKeys;
pub use place::BatchPlace;
