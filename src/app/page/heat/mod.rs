//! Heat: what temperature, and is it safe?

mod bake_card;
mod bowl_balance;
mod bowls;
mod cooling_boxes;
mod cooling_card;
mod dough_row;
mod factor_card;
mod fields;
mod flour_box;
mod fold;
mod key_figures;
mod kitchen_boxes;
mod kitchen_card;
mod known_bake;
mod paste_card;
mod paste_figure;
mod paste_remedies;
mod phases;
mod place;
mod remedy_lines;
mod results;
mod standing_fold;
mod steam;
mod temperatures;
mod ways;

pub use key_figures::HeatKeys;
pub use place::HeatPlace;
pub use results::HeatContext;
