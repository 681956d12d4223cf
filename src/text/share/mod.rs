//! Sharing and importing: a formula as text, its steps, its code, its printed pages, and the
//! report on an imported recipe.

mod code;
mod file_name;
mod fit;
mod measures;
mod page;
mod paper;
mod recipe;
mod run_steps;
mod shortened;
mod steps;
mod text;

pub use code::{CodeView, code};
pub use file_name::file_name;
pub use fit::code_side;
pub use measures::{about, in_cups};
pub use page::{BenchCard, ClassSheet, Fit, Paper, SheetRow, TypeSize};
pub use paper::{before_printing, bench_card, class_sheet, with_ready, with_run};
pub use recipe::{ImportedLine, RecipeView, recipe, recipe_names};
pub use run_steps::run_steps;
pub use shortened::{Shortened, shortened};
pub use steps::{hazards_of, steps, work};
pub use text::{markdown, plain_text};
