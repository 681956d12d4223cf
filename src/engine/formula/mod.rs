//! The formula: parts of ingredients, their percentages, and their water.

mod account;
mod bread;
mod caution;
mod compare;
mod edit;
mod error;
mod figure;
mod figure_working;
mod figures;
mod gives_way;
mod percent;
mod scald;
mod part;
mod swap;
mod target;
mod usual;
mod water;
mod water_working;
mod what_if;

pub use account::{Account, Entry};
pub use bread::Bread;
pub use caution::{Caution, cautions};
pub use compare::{Compared, LinePair, Sides};
pub use edit::{set_paste_ratio, set_part_mass, set_part_share};
pub use error::FormulaError;
pub use figure::Figure;
pub use figures::{Figures, Form};
pub use percent::{
    Basis, Percentage, PartTotals, percentage, set_mass, set_percentage, part_totals,
};
pub use scald::{Scald, scald};
pub use part::{Formula, Line, LineAt, Part, PartKind};
pub use swap::{Hold, swap};
pub use target::{Reached, Target, reach};
pub use usual::Usual;
pub use water::{Contributor, Water, WaterLedger};
pub use what_if::{WhatIf, giving_way, milk_for_water};
