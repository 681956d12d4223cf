//! Sharing and importing: a formula as text, its steps, its code, its printed pages, and the
//! report on an imported recipe.

mod card;
mod card_steps;
mod card_weights;
mod code;
mod columns;
mod file_name;
mod fit;
mod measures;
mod on_page;
mod page;
mod paper;
mod recipe;
mod shortened;
mod steps;
mod text;

pub use card::{CardList, bench_card, class_bench_card, teacher_card};
pub use card_steps::{CardStep, card_steps, with_loads};
pub use card_weights::card_weights;
pub use code::{CodeView, code};
pub use columns::blocks;
pub use file_name::file_name;
pub use fit::{LEAST, PageSize, code_side, fitted};
pub use measures::{about, in_cups};
pub use page::{BenchCard, ClassSheet, Fit, Paper, SheetRow};
pub use paper::{before_printing, class_sheet};
pub use recipe::{ImportedLine, RecipeView, recipe, recipe_names};
pub use shortened::{Shortened, shortened};
pub use steps::{hazards_of, steps, work};
pub use text::{markdown, plain_text};
