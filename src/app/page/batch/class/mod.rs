//! The class: its benches, bowls and oven loads.

mod card;
mod fields;

pub use card::ClassCard;
