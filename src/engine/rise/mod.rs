//! Rise: how long a dough takes to rise, along the temperatures it really goes through.
//!
//! In reading order: how fast yeast works at a temperature (`cardinal`), what is in the dough for
//! it (`yeast`, `yeast_activity`), where the absolute time comes from (`anchor`), what a dough went
//! through (`equivalent_time`), when it is up (`risen`), and what a formula says of its own rises (`settings`).

mod cardinal;
mod equivalent_time;
mod error;
mod reference_rise;
mod ripeness;
mod risen;
mod settings;
mod steady;
mod working;
mod yeast_activity;

pub use cardinal::Cardinal;
pub use equivalent_time::{EquivalentTime, equivalent_time};
pub use error::RiseError;
pub use reference_rise::{ReferenceBasis, ReferenceRise};
pub use ripeness::{Ripeness, RipenessState, ripeness};
pub use risen::{RiseAsked, RisePoint, Risen, rise};
pub use settings::{RiseSettings, Stated};
pub use steady::steady;
pub use yeast_activity::{YeastActivity, salt_factor, sugar_factor, yeast_activity};
