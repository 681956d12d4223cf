//! Shopping: what a batch needs, in how many packs, and what it costs.

mod error;
mod item;
mod list;
mod need;
mod working;

pub use error::ShoppingError;
pub use item::{Pack, ShoppingItem};
pub use list::{Shopping, shopping};
pub use need::{Need, needs};
