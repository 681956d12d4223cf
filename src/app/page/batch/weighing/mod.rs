//! What to weigh: the scale, each line, help for what is too little, and what rounding changes.

mod aids;
mod change_card;
mod line;
mod list;
mod scales_card;

pub use aids::WeighingAids;
pub use line::WeighLine;
pub use list::Weighing;
pub use scales_card::ScaleRow;
