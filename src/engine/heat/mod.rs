//! Heat: what a food takes to warm, where things settle when mixed, how they cool, how they bake.
//!
//! In reading order: what a food is made of for heat (`component`, `matter`, `properties`),
//! boiling and steam, mixing with bowls and ice, pastes, doughs, conduction, cooling against the
//! rules of food safety, and the oven.

mod body;
mod boiling;
mod component;
mod conduction;
mod error;
mod grid;
mod ice;
mod material;
mod matter;
mod mix;
mod properties;

pub use body::{Air, Body, Shape};
pub use boiling::{Boiling, boiling_at, boiling_under};
pub use component::Component;
pub use conduction::{Curve, Moment, Place, Stay, follow, follow_on};
pub use error::HeatError;
pub use ice::{IceWater, ice_in_water, latent_heat_of_fusion};
pub use material::{Material, Vessel};
pub use matter::{Matter, Shift};
pub use mix::{Mixed, Part, Settled, Stuff, mix};
pub use properties::{Properties, Term};
