//! Formula: what is this dough?

mod keys;
mod line_row;
mod place;
mod share_box;
mod stream_card;

pub use keys::FormulaKeys;
pub use place::FormulaPlace;
pub use stream_card::style_word;
