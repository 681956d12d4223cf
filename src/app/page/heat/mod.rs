//! Heat: what temperature, and is it safe?

mod advice;
mod bake_card;
mod bowl_card;
mod bowls;
mod cooling_boxes;
mod cooling_card;
mod factor_card;
mod fields;
mod key_figures;
mod kitchen_boxes;
mod kitchen_card;
mod known_bake;
mod paste_card;
mod paste_figure;
mod phases;
mod place;
mod remedy_buttons;
mod results;
mod standing_fold;
mod steam;
mod temperatures;

pub use key_figures::HeatKeys;
pub use place::HeatPlace;
pub use results::HeatContext;
