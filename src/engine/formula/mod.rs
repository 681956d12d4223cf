//! The formula: streams of ingredients, their percentages, and their water.

mod bread;
mod error;
mod figure;
mod figures;
mod percent;
mod stream;
mod water;
mod water_working;

pub use bread::Bread;
pub use error::FormulaError;
pub use figure::Figure;
pub use figures::{Figures, Form};
pub use percent::{
    Basis, Percentage, StreamTotals, percentage, set_mass, set_percentage, stream_totals,
};
pub use stream::{Formula, Line, LineAt, Stream, StreamKind};
pub use water::{Contributor, Water, WaterLedger};
