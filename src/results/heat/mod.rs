//! Heat: a formula in a kitchen, from the temperatures it starts at to the bake.
//!
//! [`HeatResults::of`] returns all that the page shows at once. What takes longer is requested
//! after the frame: [`DoughQuestion::remedies`], [`CoolingPlan::advise`], [`warming`].

mod apply_advice;
mod apply_paste;
mod baking;
mod cooling;
mod cooling_result;
mod dough_off_mixer;
mod heat_results;
mod heat_shares;
mod in_oven;
mod melting;
mod mixer_load;
mod mixing;
mod part_matter;
mod paste;
mod paste_cooling;
mod paste_result;
mod phase_minutes;
mod remedies;
mod start_temperatures;
mod steam;
mod time_to_target;
mod timing;
mod usual_bake;
mod warm_up;

pub use apply_advice::{
    StepAmount, apply_remedy, apply_step, flour_starts_at, ice_of, set_flour_temperature,
    set_liquid_temperature, step_amount,
};
pub use apply_paste::{PasteChange, apply_paste_change, paste_change};
pub use baking::{Baking, baking};
pub use cooling::{CoolingPlan, cooling_plan};
pub use cooling_result::{CoolingResult, coolable, paste_cooling};
pub use dough_off_mixer::{DoughFit, DoughOffMixer};
pub use heat_results::{HeatBefore, HeatInput, HeatResults};
pub use heat_shares::{HeatShare, HeatSource, shares};
pub use in_oven::InOven;
pub use melting::melting;
pub use mixer_load::{LoadSource, MixerLoad, factor_method_for, mixer_load};
pub use mixing::{DoughOffset, MixingResult, dough_offset};
pub use part_matter::part_matter;
pub use paste::paste;
pub use paste_cooling::{PasteCooling, paste_coolings};
pub use paste_result::{PasteResult, expected_steam, pastes};
pub use phase_minutes::{shown_phases, type_minutes};
pub use remedies::{
    DoughQuestion, NamedRemedies, is_met, named_remedies, offered_remedies, simplest_first,
};
pub use start_temperatures::{line_start, part_start};
pub use steam::{
    SteamPrediction, reckon_with_steam, steam_of, stirred_in, weigh_cooked, weigh_cooked_part,
};
pub use time_to_target::{StillNeeds, measured_at, time_to_target};
pub use timing::{TimesAsked, expected_bake, planned_phases, times};
pub use usual_bake::usual_bake;
pub use warm_up::{Warming, is_long_standing, warming};
