//! The batch: how much of a formula is made, weighed on which scale, divided into what.

mod wanted;

pub use wanted::{Losses, Wanted};
