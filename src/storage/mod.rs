//! How data is stored and sent: records (JSON), links, files, import and export.
//!
//! Everything is read back through the same constructors as typing, and a failure says where.

pub mod calendar;
pub mod csv;
mod enum_names;
mod fragment;
pub mod interchange;
mod json;
pub mod key;
pub mod link;
pub mod record;
mod repair;

pub use fragment::Fragment;
pub use json::Json;
pub use record::{Record, RecordError, RecordFault};
pub use repair::{Repaired, repair};
