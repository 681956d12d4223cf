//! Batch: how much of it, in what?

mod answers;
mod baked_card;
mod change_card;
mod cures;
mod divide_card;
mod field;
mod fields;
mod keys;
mod losses_card;
mod make_formula;
mod on_hand;
mod place;
mod scales_card;
mod wanted_card;
mod ways;
mod weigh_line;
mod weighing;

pub use answers::{BatchAnswers, made, scale_sheet};
pub use fields::STAYS;
pub use keys::BatchKeys;
pub use place::BatchPlace;
pub use wanted_card::WantedCard;
pub use weigh_line::WeighLine;
