//! Chocolate: what goes inside, and the syrup that goes on top.

mod blend;
mod curve;
mod defaults;
mod density;
mod error;
mod fill;
mod fill_working;
mod handling;
mod liquid_needed;
mod melt;
mod melt_remedy;
mod melt_working;
mod minimum_water;
mod rescue;
mod room_working;
mod solubility;
mod solve_for;
pub mod sugar_solution;
mod suspension;
mod syrup;
mod syrup_caution;
mod syrup_of_part;
mod syrup_parts;
mod syrup_working;
mod water_activity;
mod water_activity_working;

pub use blend::{ChocolatePart, Portioned};
pub use curve::{CurvePoint, FlowCurve};
pub use defaults::{usual_filling, usual_syrup};
pub use error::ChocolateError;
pub use fill::{Fill, FillAsked, FillCaution, fill};
pub use handling::Consistency;
pub use liquid_needed::LiquidNeeded;
pub use melt::{
    LATENT_HEAT, Lumps, MELTED, MeltHeat, Melted, Melting, heat_to_melt, melt, solid_fat,
};
pub use melt_remedy::{MeltRemedy, melt_remedies};
pub use minimum_water::MinimumWater;
pub use rescue::{AddWater, BathTime, SyrupLook, add_water, bath_time};
pub use solubility::SolubilityTable;
pub use solve_for::{set_filling, set_liquid};
pub use suspension::SyrupModel;
pub use syrup::{Flow, Syrup};
pub use syrup_caution::SyrupCaution;
pub use water_activity::{Perishability, WaterActivity, sugar_water_activity};
