//! Interchange: a formula in forms that other programs, papers and phones read.
//!
//! A square code for a link, its picture as SVG and PNG; CSV; and recipes in the vocabulary of
//! schema.org, out and in.

mod csv;
mod png;
mod recipe;
mod shorter;
mod square_code;
mod svg;

pub use csv::csv;
pub use png::png;
pub use recipe::{
    Amount, Found, Heading, MeasureSource, MeasureUnit, RECIPE_LIMIT, ReadRecipe, RecipeError,
    RecipeLine, RecipeNames, Understood, Unread, folded, in_measures, is_japanese, meant,
    other_names, read_recipe, write_recipe,
};
pub use shorter::{Omission as LinkPart, Shorter, shorter};
pub use square_code::{Level, SquareCode, SquareCodeError, square_code};
pub use svg::svg;
