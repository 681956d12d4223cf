//! What is kept: formulas with their batch and the kitchen, as typed data.
//!
//! Everything here is plain data; it is written down by `record` (JSON) and `link` (a link's
//! fragment), and read back through the same constructors as typing.

mod kept;
mod kitchen;
pub mod link;
pub mod plain;
pub mod record;
mod settings;
mod spelling;

pub use kept::{Batch, Sheet};
pub use kitchen::{Kitchen, Scales};
pub use settings::{Settings, Theme, Units};
