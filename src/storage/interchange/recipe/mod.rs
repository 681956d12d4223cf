//! Recipes in the vocabulary of schema.org: written, and read as far as they can be understood.

mod amount;
mod document;
mod error;
mod food_name;
mod food_words;
mod household;
mod in_measures;
mod line;
mod measure;
mod plain_html;
mod read;
mod sections;
mod token;
mod write;

pub use error::RecipeError;
pub use in_measures::in_measures;
pub use line::{Amount, Found, Unread};
pub use measure::MeasureUnit;
pub use read::{Heading, RECIPE_LIMIT, ReadRecipe, RecipeLine, Understood, read_recipe};
pub use write::write_recipe;
