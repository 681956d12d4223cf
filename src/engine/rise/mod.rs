//! Rise: how long a dough takes to rise, along the temperatures it really goes through.
//!
//! In reading order: how fast yeast works at a temperature (`cardinal`), what is in the dough for
//! it (`yeast`, `vigour`), where the absolute time comes from (`anchor`), what a dough went
//! through (`spent`), when it is up (`risen`), and what a formula says of its own rises (`wishes`).

mod anchor;
mod cardinal;
mod error;
mod risen;
mod spent;
mod steady;
mod vigour;
mod wishes;
mod working;
mod yeast;

pub use anchor::{Anchor, Basis};
pub use cardinal::Cardinal;
pub use error::RiseError;
pub use risen::{RiseAsked, RisePoint, Risen, rise};
pub use spent::{Spent, spent};
pub use steady::steady;
pub use vigour::{Vigour, salt_factor, sugar_factor, vigour};
pub use wishes::{RiseWishes, Stated};
pub use yeast::YeastKind;
