//! Numbers and sentences: reading what was typed, writing figures, saying what is wrong.

pub mod allergens;
pub mod caution;
pub mod chart;
pub mod chocolate_rescue;
pub mod class;
pub mod compared;
pub mod day;
pub mod error;
pub mod example;
pub mod format;
pub mod format_options;
pub mod heat;
pub mod import_report;
pub mod language;
pub mod line;
pub mod name;
pub mod notice;
pub mod nutrition;
pub mod read;
pub mod search;
pub mod share;
pub mod shopping;
pub mod tins;
pub mod trial;
pub mod unit;
pub mod weighing;
pub mod working;

pub use caution::Advice;
pub use error::ErrorText;
pub use format_options::{FormatOptions, NumberStyle};
pub(crate) use language::{tr, tr_noop};
pub use unit::{MassUnit, TemperatureUnit, Units};
