//! Batch: how much of it, in what?

mod baked_card;
mod change_card;
mod cures;
mod divide_card;
mod field;
mod fields;
mod key_figures;
mod losses_card;
mod make_formula;
mod on_hand;
mod place;
mod results;
mod scales_card;
mod wanted_card;
mod ways;
mod weigh_line;
mod weighing;

pub use fields::STAYS;
pub use key_figures::BatchKeys;
pub use place::BatchPlace;
pub use results::{BatchAnswers, made, scale_sheet};
pub use wanted_card::WantedCard;
pub use weigh_line::WeighLine;
