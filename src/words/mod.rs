//! Numbers and sentences: reading what was typed, writing figures, saying what is wrong.

pub mod manner;
pub mod read;
pub mod unit;
pub mod write;

pub use manner::{Manner, NumberStyle};
pub use unit::{MassUnit, TemperatureUnit, Units};
