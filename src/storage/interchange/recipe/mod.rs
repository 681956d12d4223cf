//! Recipes in the vocabulary of schema.org: written, and read as far as they can be understood.

mod amount;
mod document;
mod error;
mod food_name;
mod food_words;
mod household;
mod in_measures;
mod japanese;
mod japanese_words;
mod letters;
mod line;
mod measure;
mod names;
mod plain_html;
mod read;
mod sections;
mod spanish;
mod spanish_words;
mod token;
mod write;

pub use error::RecipeError;
pub use food_name::{meant, other_names};
pub use in_measures::in_measures;
pub use letters::{folded, is_japanese};
pub use line::{Amount, Found, MeasureSource, Unread};
pub use measure::MeasureUnit;
pub use names::RecipeNames;
pub use read::{Heading, RECIPE_LIMIT, ReadRecipe, RecipeLine, Understood, read_recipe};
pub use write::write_recipe;
