//! Quantities: one type for each kind of number, always finite, always within its own range.

mod altitude;
mod conductivity;
mod density;
mod factor;
mod heat;
mod heat_capacity;
mod heat_per_mass;
mod length;
mod mass;
mod out_of_range;
mod pressure;
mod share;
mod specific_heat;
mod surface_coefficient;
mod temperature;
mod time;
mod viscosity;
mod warming_rate;

pub use altitude::Altitude;
pub use conductivity::Conductivity;
pub use density::Density;
pub use factor::Factor;
pub use heat::Heat;
pub use heat_capacity::HeatCapacity;
pub use heat_per_mass::HeatPerMass;
pub use length::Length;
pub use mass::{Mass, MassChange};
pub use out_of_range::OutOfRange;
pub use pressure::Pressure;
pub use share::{Share, ShareChange};
pub use specific_heat::SpecificHeat;
pub use surface_coefficient::SurfaceCoefficient;
pub use temperature::{Temperature, TemperatureChange};
pub use time::Minutes;
pub use viscosity::Viscosity;
pub use warming_rate::WarmingRate;
