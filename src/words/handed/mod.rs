//! What is handed out and taken in, told: a formula as text, its steps, a code, a recipe that was read.

mod code;
mod paper;
mod recipe;
mod steps;
mod text;

pub use code::{CodeView, code};
pub use paper::{BenchCard, ClassSheet, Density, SheetRow, bench_card, class_sheet};
pub use recipe::{RecipeView, TakenLine, recipe};
pub use steps::steps;
pub use text::{markdown, plain_text};
