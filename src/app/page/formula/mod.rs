//! Formula: what is this dough?

mod about_card;
mod cautions;
mod compare;
mod compare_card;
mod figures_card;
mod hold_button;
mod key_figures;
mod line_row;
mod part_card;
mod part_shares;
mod place;
mod rest;
mod target_fields;
mod water_card;
mod what_if_sheet;
mod what_ifs;

pub use about_card::AboutFields;
pub use compare::Compare;
pub use key_figures::FormulaKeys;
pub use line_row::{CardTexts, LineRows};
pub use part_shares::PartShares;
pub use place::{FormulaCards, FormulaPlace};
pub use rest::FormulaRest;
pub use water_card::WaterContent;
pub use what_if_sheet::WhatIfSheet;
pub use what_ifs::WhatIfContent;
