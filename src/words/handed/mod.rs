//! What is handed out and taken in, told: a formula as text, its steps, a code, a recipe that was read.

mod code;
mod recipe;
mod steps;
mod text;

pub use code::{CodeView, code};
pub use recipe::{RecipeView, TakenLine, recipe};
pub use steps::steps;
pub use text::{markdown, plain_text};
