//! Records: what is kept, as JSON that says what it is and which version, with a unit in the name
//! of every number (`mass_g`, `at_c`; a `…_share` is a fraction of one).
//!
//! Reading goes through the same constructors as typing, and a failure names the way to it.

mod bake;
mod batch;
mod bench;
mod class;
mod day;
mod envelope;
mod error;
mod fields;
mod file;
mod formula;
mod heat;
mod kitchen;
mod log;
mod log_file;
mod observation;
mod own;
mod pantry;
mod print;
mod rises;
mod settings;
mod sheet;
mod shelf;
mod tin;
mod tree;
mod trial;
mod upgrade;
mod workspace;

pub use bench::{read_bench, write_bench};
pub use class::{read_class, write_class};
pub use day::{read_day, write_day};
pub use envelope::{FILE_LIMIT, RECORD_LIMIT, is_newer};
pub use error::{Expected, RecordError, RecordFault};
pub use file::{FormulaInFile, Opened, read_file, write_file};
pub use kitchen::{read_kitchen, read_kitchens, write_kitchen, write_kitchens};
pub use log::{read_log, write_log};
pub use log_file::{LogFile, Photo, read_log_file, write_log_file};
pub use pantry::{read_pantry, write_pantry};
pub use settings::{read_settings, write_settings};
pub use sheet::{read_sheet, write_sheet};
pub use shelf::{read_shelf, write_shelf};
pub use tin::{read_tins, write_tins};
pub use tree::Tree;
pub use trial::{read_trial, write_trial};
pub use upgrade::VERSION;
