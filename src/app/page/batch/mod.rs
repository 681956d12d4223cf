//! Batch: how much of it, in what?

mod baked_card;
mod bench_boxes;
mod change_card;
mod divide_card;
mod field;
mod fields;
mod key_figures;
mod losses_card;
mod make_formula;
mod on_hand;
mod place;
mod previous_targets;
mod results;
mod scales_card;
mod wanted_card;
mod weigh_line;
mod weighing;
mod weighing_aids;

pub use fields::STAYS;
pub use key_figures::BatchKeys;
pub use place::BatchPlace;
pub use results::BatchAnswers;
pub use wanted_card::WantedCard;
pub use weigh_line::WeighLine;
