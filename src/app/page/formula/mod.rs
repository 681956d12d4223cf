//! Formula: what is this dough?

mod about_card;
mod cautions;
mod compare;
mod compare_card;
mod figures_card;
mod key_figures;
mod line_row;
mod part_card;
mod place;
mod rest;
mod share_box;
mod target_card;
mod water_card;
mod what_ifs;

pub use compare::Compare;
pub use key_figures::FormulaKeys;
pub use line_row::{CardTexts, LineRows};
pub use place::FormulaPlace;
pub use rest::FormulaRest;
