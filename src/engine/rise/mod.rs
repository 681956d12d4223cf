//! Rise: how long a dough takes to rise, along the temperatures it really goes through.
//!
//! In reading order: how fast yeast works at a temperature (`cardinal`), what is in the dough for
//! it (`yeast`, `vigour`), where the absolute time comes from (`anchor`), what a dough went
//! through (`spent`), when it is up (`risen`), and what a formula says of its own rises (`wishes`).

mod reference_rise;
mod cardinal;
mod error;
mod risen;
mod equivalent_time;
mod steady;
mod yeast_activity;
mod settings;
mod working;
mod yeast;

pub use reference_rise::{ReferenceRise, Basis};
pub use cardinal::Cardinal;
pub use error::RiseError;
pub use risen::{RiseAsked, RisePoint, Risen, rise};
pub use equivalent_time::{EquivalentTime, spent};
pub use steady::steady;
pub use yeast_activity::{YeastActivity, salt_factor, sugar_factor, vigour};
pub use settings::{RiseSettings, Stated};
pub use yeast::YeastKind;
