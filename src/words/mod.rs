//! Numbers and sentences: reading what was typed, writing figures, saying what is wrong.

pub mod caution;
pub mod class;
pub mod compared;
pub mod day;
pub mod example;
pub mod filed;
pub mod handed;
pub mod heat;
pub mod language;
pub mod line;
pub mod manner;
pub mod name;
pub mod notice;
pub mod picture;
pub mod read;
pub mod search;
pub mod tried;
pub mod trouble;
pub mod unit;
pub mod weigh;
pub mod working;
pub mod write;

pub use caution::Advice;
pub(crate) use language::{message, say};
pub use manner::{Manner, NumberStyle};
pub use trouble::Trouble;
pub use unit::{MassUnit, TemperatureUnit, Units};
