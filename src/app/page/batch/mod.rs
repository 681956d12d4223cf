//! Batch: how much of it, in what?
//!
//! A section of the place is a folder: its cards and its fields. What they show is computed by the
//! module of the same name in `results::batch` and worded by `text`.

mod allergens;
mod baked_card;
mod class;
mod dividing;
mod field;
mod key_figures;
mod losses;
mod lower_cards;
mod make_formula;
mod nutrition;
mod place;
mod results;
mod shopping;
mod target;
mod tins;
mod weighing;

pub use key_figures::BatchKeys;
pub use losses::STAYS;
pub use place::BatchPlace;
pub use results::BatchContext;
pub use target::TargetBoxes;
pub use tins::TinBody;
pub use weighing::{WeighLine, WeighingAids};
