//! Losses on the way from the scale to the table.

mod card;
mod fields;

pub use card::LossesCard;
pub use fields::STAYS;
