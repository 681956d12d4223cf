//! Display names of everything that has one.

mod batch;
mod chocolate;
mod class;
mod day;
mod formula;
mod heat;
mod ingredients;
mod label;
mod place;

pub use batch::target_kind;
pub use chocolate::{flow, handling, handling_looks, keeps_as};
pub use class::{ahead, law, link_part, measure, nutrient, tin_kind, tin_measure};
pub use day::{names_of, step, step_at, step_of, step_with_heat, weekday, work};
pub use formula::{bread, figure, form, part, part_kind, percentages, what_if};
pub use heat::{
    bake_length, baked_shape, called, cooling_vessel, grain, heat_from, lumps, material,
    printed_factor, rule_set, rules_of,
};
pub use ingredients::{allergen, allergen_in_list, allergen_list, food, food_of, food_short, role};
pub use label::label_line;
pub use place::place;
