//! The formula: parts of ingredients, their percentages, and their water.

mod bread;
mod caution;
mod compare;
mod edit;
mod error;
mod figure;
mod figure_working;
mod figures;
mod gives_way;
mod part;
mod percent;
mod scald;
mod swap;
mod target;
mod usual;
mod water;
mod water_working;
mod what_if;

pub use bread::Bread;
pub use caution::{Caution, cautions};
pub use compare::{Compared, LinePair, Sides};
pub use edit::{set_part_mass, set_part_share, set_paste_ratio};
pub use error::FormulaError;
pub use figure::Figure;
pub use figures::{Figures, Form};
pub use part::{Formula, Line, LineAt, Part, PartKind};
pub use percent::{
    Basis, PartTotals, Percentage, part_totals, percentage, set_mass, set_percentage,
};
pub use scald::{Scald, scald};
pub use swap::{Hold, swap};
pub use target::{FigureTarget, Reached, reach};
pub use usual::Usual;
pub use water::{Contributor, Water, WaterLedger};
pub use what_if::{WhatIf, giving_way, less_water, milk_for_water, with_water_line};
