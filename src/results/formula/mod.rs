//! Formula: the results of a sheet's weights, and the formulas that reach a figure.
//!
//! [`of`] returns everything that the place shows; [`line()`] and [`part`] one row and one card of
//! it, which the page draws first.

mod adjust;
mod change;
mod formula_results;
mod offers;
mod part_results;
mod usual_foods;

pub use adjust::{Adjuster, adjusted_working, adjusters, nudged, try_adjusted};
pub use change::{gives_way, reached, try_figure};
pub use formula_results::{
    FormulaResults, LinePercentages, WaterResults, caution_working, cautions, figures, is_empty,
    of, water, working,
};
pub use offers::{Offer, try_what_if, what_ifs};
pub use part_results::{LineResults, PartResults, SettableShare, line, part, part_working};
pub use usual_foods::usual_foods;
