//! Heat: what a food takes to warm, where things settle when mixed, how they cool, how they bake.
//!
//! In reading order: what a food is made of for heat (`component`, `matter`, `properties`),
//! boiling and steam, mixing with bowls and ice, pastes, doughs, conduction, cooling against the
//! rules of food safety, and the oven.

mod bake;
mod bake_time;
mod baked_shape;
mod balance;
mod body;
mod boiling;
mod component;
mod conduction;
mod cooked_paste;
mod cooled;
mod cooling;
mod cooling_advice;
mod cooling_bound;
mod cooling_choice;
mod cooling_factors;
mod cooling_vessel;
mod core_target;
mod development;
mod dough;
mod dough_remedy;
mod dough_step;
mod dough_ways;
mod error;
mod evaporation;
mod factor_method;
mod filling;
mod grain;
mod grid;
mod heat_part;
mod ice;
mod ice_share;
mod liquid;
mod loaf_body;
mod loaf_cooling;
mod material;
mod matter;
mod mix;
mod paste;
mod paste_remedy;
mod paste_working;
mod properties;
mod room_exchange;
mod rule_set;
mod steam;
mod surroundings;
mod vessel_cooling;
mod vessel_grid;
mod vessel_solver;
mod warm_up;

pub use bake::{
    HeatFrom, Phase, PhaseAdvice, Programme, ReviewedPhase, fan_to_still, review, still_to_fan,
};
pub use bake_time::{BakeSetting, BakeTime, bake_time};
pub use baked_shape::{BakedBody, BakedShape, baked_specific_volume};
pub use body::{Air, Body, Shape};
pub use boiling::{Boiling, boiling_at, boiling_under};
pub use component::Component;
pub use conduction::{Curve, Exposure, Probe, Sample, simulate, simulate_coarsely, simulate_on};
pub use cooked_paste::{CookedFlour, CookedPaste, PasteLimit, cook};
pub use cooled::{Cooled, StageResult, judge};
pub use cooling::{CooledRange, Cooling, CoolingWay, IN_FRIDGE};
pub use cooling_advice::{CoolingAdvice, CoolingRemedy, advise};
pub use cooling_choice::{ChosenWay, quickest};
pub use cooling_factors::{CoolingFactors, KitchenFactor, Pace};
pub use cooling_vessel::{CoolingVessel, Laid};
pub use core_target::{CoreTarget, Crumb, core_target};
pub use development::Development;
pub use dough::{
    Dough, DoughItem, DoughTemperature, HEAT_OF_HYDRATION, LiquidUse, dough_temperature,
};
pub use dough_remedy::DoughRemedy;
pub use dough_step::DoughStep;
pub use dough_ways::dough_remedies;
pub use error::HeatError;
pub use evaporation::{OpenAir, Stirring, evaporated};
pub use factor_method::{FactorMethod, PrintedFactor, factor_method};
pub use filling::{Cover, Filling, VesselStay};
pub use grain::{CookingRange, Grain};
pub use heat_part::{HeatPart, ThermalMaterial};
pub use ice::latent_heat_of_fusion;
pub use ice_share::{IceAnswer, ice_for};
pub use liquid::{LiquidAnswer, OutOfReach, liquid_for};
pub use loaf_body::LoafBody;
pub use loaf_cooling::{CUT_AT, LoafCooling, cool_loaf};
pub use material::{Material, Vessel};
pub use matter::{Matter, TemperatureStep};
pub use mix::{Mixed, Settled, mix};
pub use paste::{HEAT_OF_COOKING, Paste, Scalded};
pub use paste_remedy::PasteRemedy;
pub use properties::{Properties, Term};
pub use room_exchange::RoomExchange;
pub use rule_set::{RuleSet, Stage};
pub use steam::{SteamLoss, latent_heat_of_boiling, steam_loss};
pub use surroundings::{LiquidRange, Surroundings};
pub use vessel_cooling::{VesselCourse, simulate_in_vessel};
pub use warm_up::{Stood, stand};

pub(crate) use balance::Balance;
pub(crate) use mix::equilibrate;
