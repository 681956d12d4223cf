//! The kitchen: what is true of this room and its equipment, and what it makes of a formula.
//!
//! In reading order: the kitchen, what is wished of heat, how warm each thing is as it goes in,
//! then the questions put to `heat`, `rise` and `chocolate`: paste, cooling, dough, rises, oven, melting.

mod apply_advice;
mod baking;
mod balance;
mod cooling;
mod equipment;
mod melting;
mod mixer_load;
mod paste;
mod place;
mod settings;
mod standing;
mod start_temperatures;
mod time_to_target;
mod timing;
mod weighed;

pub use apply_advice::{pour_at, take_step};
pub use baking::{Baking, baking};
pub use balance::{HeatShare, HeatSource, shares};
pub use cooling::{CoolingPlan, cooling_plan};
pub use equipment::{Bowl, Mixer, Oven, Scales};
pub use melting::melting;
pub use mixer_load::{LoadSource, MixerLoad, bowlful, factor_method_for};
pub use paste::paste;
pub use place::{BoilsBy, Kitchen};
pub use settings::{
    BakeSettings, CoolingSettings, HeatSettings, KnownBake, MeltSettings, PasteSettings,
};
pub use standing::{Warming, warming};
pub use time_to_target::{StillNeeds, measured_at, time_to_target};
pub use timing::{TimesAsked, times};
pub use weighed::{steam_of, stirred_in, weigh_cooked};
