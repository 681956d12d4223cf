//! Numbers and sentences: reading what was typed, writing figures, saying what is wrong.

pub mod caution;
pub mod class;
pub mod compared;
pub mod day;
pub mod example;
pub mod import_report;
pub mod share;
pub mod heat;
pub mod language;
pub mod line;
pub mod format_options;
pub mod name;
pub mod notice;
pub mod chart;
pub mod read;
pub mod search;
pub mod trial;
pub mod error;
pub mod unit;
pub mod weighing;
pub mod working;
pub mod format;

pub use caution::Advice;
pub(crate) use language::{message, tr};
pub use format_options::{FormatOptions, NumberStyle};
pub use error::Trouble;
pub use unit::{MassUnit, TemperatureUnit, Units};
