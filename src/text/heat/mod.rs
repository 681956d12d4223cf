//! Heat in sentences: results, obstacles and remedies, with numbers.

mod answer;
mod bake;
mod before;
mod cooling;
mod cooling_way;
mod development;
mod dough;
mod factor;
mod melt;
mod names;
mod paste;
mod standing;
mod steam;
mod step;
mod trust;

pub use answer::{
    bake_answer, cooling_answer, cut_answer, dough_answer, kitchen_answer, off_mixer, paste_answer,
};
pub use bake::{bake_time, core, known_bake, loaf_cooling, phase, phase_advice};
pub use before::{before_and_change, dough_before_and_change};
pub use cooling::{stage, stage_verdict, verdict};
pub use cooling_way::{bench_at_most, cooling_remedy, cooling_way};
pub use development::development;
pub use dough::{Morning, balance_sum, dough_temperature, liquid, liquid_at, liquid_name};
pub use factor::{factor_differs, printed_factor};
pub use melt::{bath_caution, melt_gently, melt_remedy, melted};
pub use names::{giver, standing_names};
pub use paste::{flour_cooks, paste, paste_remedy, paste_remedy_line};
pub use standing::{standing_long, warming};
pub use steam::steam_predicted;
pub use step::{offered, reached, remedy, step, step_alone, steps};
pub use trust::{trust_cooling, trust_dough, trust_paste};
