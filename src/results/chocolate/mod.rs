//! Chocolate: the filling and the syrup of a sheet, how the syrup flows, keeps and melts.

mod change;
mod chocolate_results;
mod rescue;
mod usual_part;
mod verdict;

pub use change::{FillingTarget, SetError};
pub use chocolate_results::{
    ChocolateResults, FillingResults, MeltResults, MeltTemperatures, SyrupResults, filling,
    melt_temperatures, melted, of, syrup, syrup_at, syrup_made,
};
pub use rescue::{Rescue, rescue};
pub use usual_part::usual_part;
pub use verdict::SyrupVerdict;
