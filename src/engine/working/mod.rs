//! What a line of working is: a rule in letters, the numbers put in, and what came out.
//!
//! Each answer keeps the numbers met on the way; a `working.rs` beside the function turns them
//! into lines. `tests/working/` reads every rule by school arithmetic and must get the answer.

mod line;
mod table_reading;

pub use line::{Given, WorkingLine, given};
pub(crate) use table_reading::TableReading;
