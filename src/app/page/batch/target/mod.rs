//! The batch target: its kind, its numbers, the ingredient on hand.

mod card;
mod fields;
mod on_hand;
mod previous;

pub use card::{TargetBoxes, TargetRow};
pub use previous::PreviousTargets;
