//! Results of a sheet, a kitchen and the log: pure functions, one module a place.
//!
//! Each module has one entry that returns every number its place shows. The page, the worksheet,
//! paper and the calendar call these entries and assemble nothing themselves. Time is an argument;
//! nothing here reads a clock, keeps state or writes a sentence.

pub mod batch;
pub mod chocolate;
pub mod day;
pub mod formula;
pub mod heat;
pub mod run;
