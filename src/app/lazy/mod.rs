//! Lazy: what the browser loads when it is first used, so that a first visit is light.

mod chunks;
pub mod language;
mod lazy_view;
pub mod links;
mod places;
pub mod records;

pub use chunks::day::{bake_notice, find_bake, start_timers};
pub use chunks::dialogs::{compare, dialog};
pub use chunks::formula::{formula_rest, part_shares};
pub use chunks::formula_rows::{trial_bar, water_content, what_if_content};
pub use chunks::visit::{
    load_visit, load_visit_rest, not_yet_for_tin, own_tin, visit, visit_keys, visit_notice,
    visit_steps, weighing_help,
};
pub use chunks::what_if::what_if;
pub use places::{key_figures, place};
