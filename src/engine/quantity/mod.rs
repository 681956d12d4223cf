//! Quantities: one type for each kind of number, always finite, always within its own range.

mod factor;
mod mass;
mod out_of_range;
mod share;
mod temperature;
mod viscosity;

pub use factor::Factor;
pub use mass::{Mass, MassChange};
pub use out_of_range::OutOfRange;
pub use share::{Share, ShareChange};
pub use temperature::{Temperature, TemperatureChange};
pub use viscosity::Viscosity;
