//! The shell: what stands around every place.

mod foot;
mod head;
mod keys;
mod opened;
mod places;
mod whole;

pub use whole::Whole;
